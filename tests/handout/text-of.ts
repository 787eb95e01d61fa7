/** What a page says, without its style and pictures. */
export const textOf = (html: string): string =>
  html.replace(/<(style|svg)[\s\S]*?<\/\1>/g, '').replace(/<[^>]+>/g, ' ');

/** The lines of its box of cautions. */
export const cautionsOn = (html: string): string[] => {
  const [, box = ''] = /<section class="cautions">([\s\S]*?)<\/section>/.exec(html) ?? [];
  return [...box.matchAll(/<li>(.*?)<\/li>/g)].map(([, line = '']) => line);
};
