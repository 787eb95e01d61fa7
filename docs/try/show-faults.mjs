import { elementOf, inputOf } from './elements.mjs';

/** @param {HTMLFormElement} form */
export function clearFaults(form) {
  for (const field of form.querySelectorAll('[aria-invalid]')) field.removeAttribute('aria-invalid');
  for (const place of form.querySelectorAll('.fault')) place.textContent = '';
}

/**
 * Says beside each field what is wrong with it, and in the live region which fields these are.
 *
 * @param {HTMLFormElement} form
 * @param {readonly import('./ask.mjs').Fault[]} faults
 */
export function showFaults(form, faults) {
  for (const { field, given, wanted } of faults) {
    const input = inputOf(field);
    const what = input.value.trim() === '' ? 'Nothing is there' : `${given} cannot be used`;
    elementOf(`${field}-fault`).textContent = `${what}. Give ${wanted}.`;
    input.setAttribute('aria-invalid', 'true');
  }
  const names = faultyFields(form).map(({ labels }) => `“${labels?.[0]?.textContent}”`);
  elementOf('news').textContent = `No prediction yet: look at ${names.join(' and ')}.`;
}

/** The fields at fault, in the order of the form. @param {HTMLFormElement} form */
export const faultyFields = (form) =>
  /** @type {HTMLInputElement[]} */ ([...form.querySelectorAll('[aria-invalid]')]);
