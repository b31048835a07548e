const TYPED_INTO = 'input[type="text"], select, button[type="submit"]';

/**
 * Enter goes on to the next box of a form, as on a counter's till, instead of sending it; on the last, to the button.
 * False when the key was meant for something else (a button, a choice).
 */
export function focusNext(form: HTMLFormElement, from: EventTarget): boolean {
  const boxes = [...form.querySelectorAll<HTMLElement>(TYPED_INTO)].filter(
    (box) => box.offsetParent !== null,
  );
  const place = from instanceof HTMLElement ? boxes.indexOf(from) : -1;
  if (place < 0 || place === boxes.length - 1) return false;
  boxes[place + 1]?.focus();
  return true;
}
