import { servicesOf } from '@halfshaft/itinerary';
import { StripDrawing } from '../route/strip-drawing';
import { layoutStrip } from '../route/strip-layout';
import { EXAMPLE_EVENT } from './example-event';
import styles from './example-line.module.css';

const LINE_PIXELS = 1120;

/** The route strip of an invented event. Drawn when the site is built: it costs the visitor no script. */
export function ExampleLine() {
  const layout = layoutStrip({
    itinerary: EXAMPLE_EVENT,
    services: servicesOf(EXAMPLE_EVENT),
    fromIndex: 0,
    toIndex: EXAMPLE_EVENT.points.length - 1,
    width: LINE_PIXELS,
    leastPixelsPerKilometre: 0,
  });
  return (
    <div className={styles.line}>
      <StripDrawing
        layout={layout}
        itinerary={EXAMPLE_EVENT}
        startPosition={1}
        hereMetres={null}
        label="An example: one day of stages along the kilometres, with services A, B and C as gaps in the line."
      />
    </div>
  );
}
