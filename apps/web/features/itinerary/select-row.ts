import { rowRange } from './row-range';

/** Lines left visible above the one that is selected. */
const LINES_ABOVE = 2;

/** Puts the cursor on one row of the pasted table and brings it into view, sideways at its beginning. */
export function selectRow(box: HTMLTextAreaElement, row: number): void {
  const { start, end, line } = rowRange(box.value, row);
  box.focus();
  box.setSelectionRange(start, end);
  const lineHeight = Number.parseFloat(getComputedStyle(box).lineHeight);
  if (Number.isFinite(lineHeight)) box.scrollTop = Math.max(0, line - LINES_ABOVE) * lineHeight;
  box.scrollLeft = 0;
  box.scrollIntoView({ block: 'nearest' });
}
