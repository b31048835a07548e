/** The colours, sizes and targets of the pages (`apps/web/app/globals.css`), for the one page that is not built with them. */
export const JOIN_STYLE = `:root {
  color-scheme: light dark;
  --ground: light-dark(#e4e8e0, #12171a);
  --sheet: light-dark(#fafcf7, #1c2327);
  --ink: light-dark(#171c1f, #f0f3ec);
  --rule-soft: light-dark(#c3cac2, #3b464b);
  --carbon: light-dark(#262f8f, #bac5ff);
  --on-carbon: light-dark(#ffffff, #10142b);
}
* { box-sizing: border-box; }
body {
  margin: 0;
  background: var(--ground);
  color: var(--ink);
  font: 1.0625rem/1.45 "Atkinson Hyperlegible Next", "Atkinson Hyperlegible", Verdana, system-ui, sans-serif;
  overflow-wrap: break-word;
}
main { max-width: 44rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; }
h1, h2 { line-height: 1.2; margin: 0; text-wrap: balance; }
h1 { font-size: 1.75rem; }
h2 { font-size: 1.375rem; }
p, ul, ol { margin: 0.75rem 0 0; }
ul, ol { padding-inline-start: 1.5rem; }
li + li { margin-top: 1rem; }
li > p:first-child { margin-top: 0; }
.lead { font-size: 1.1875rem; }
section {
  margin-top: 1.5rem;
  padding: 1.5rem 1rem;
  background: var(--sheet);
  border: 2px solid var(--rule-soft);
  border-radius: 3px;
}
.go {
  display: inline-flex;
  align-items: center;
  min-height: 3rem;
  max-width: 100%;
  padding: 0.5rem 1.25rem;
  border: 2px solid var(--carbon);
  border-radius: 3px;
  background: var(--carbon);
  color: var(--on-carbon);
  font-weight: 600;
  text-decoration: none;
  overflow-wrap: anywhere;
}
.go.quiet { background: transparent; color: var(--carbon); }
.go:focus-visible { outline: 3px solid var(--carbon); outline-offset: 2px; }
.fingerprint { font-weight: 600; font-variant-numeric: tabular-nums; }
.fingerprint span { display: inline-block; }
.code { margin-top: 0.75rem; max-width: 14rem; background: #ffffff; }
.code svg { display: block; width: 100%; height: auto; }
@media (min-width: 40rem) {
  section { padding-inline: 1.5rem; }
}
`;
