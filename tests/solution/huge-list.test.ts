import { equilibrate } from 'protolysis';
import { expect, test } from 'vitest';
import { listed } from '../faults-of.js';

test('a list longer than any solution has is refused unread', () => {
  const contents: never[] = [];
  contents.length = 4_294_967_295;
  expect(listed(() => equilibrate({ mL: 10, contents }))).toEqual(['out-of-range solution.contents']);
});

test('contents are read once', () => {
  let reads = 0;
  const contents = new Proxy([{}], {
    get: (list, key) => {
      if (key === '0') reads += 1;
      return Reflect.get(list, key);
    },
  });
  expect(() => equilibrate({ mL: 10, contents: contents as never })).toThrow('solution.contents[0]');
  expect(reads).toBe(1);
});
