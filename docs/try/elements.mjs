/** An element of the page, by its id. @param {string} id */
export function elementOf(id) {
  const found = document.getElementById(id);
  if (!found) throw new Error(`the page has no #${id}`);
  return found;
}

/** A field of the form, by its id. @param {string} id */
export const inputOf = (id) => /** @type {HTMLInputElement | HTMLSelectElement} */ (elementOf(id));

/**
 * A new element with texts or other elements in it. Texts are never read as markup.
 *
 * @param {string} name
 * @param {...(string | Node)} content
 */
export function make(name, ...content) {
  const element = document.createElement(name);
  element.append(...content);
  return element;
}

/** @param {readonly string[]} items */
export const listOf = (items) => make('ul', ...items.map((item) => make('li', item)));
