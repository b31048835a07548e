import { LinkButton } from '@/components/link-button';
import { PageFrame } from '@/features/frame/page-frame';
import { ExampleLine } from '@/features/landing/example-line';
import styles from './page.module.css';

export default function LandingPage() {
  return (
    <PageFrame>
      <div className={styles.page}>
        <h1 className={styles.job}>
          What this car needs at this service, who does it, and when it must leave.
        </h1>
        <ExampleLine />
        <div className={styles.ways}>
          <section className={styles.way}>
            <h2>Plan a service now, no account</h2>
            <p>
              Choose drive and surface, paste the itinerary, say how many people there are. You get the sheet
              for Service A by person, with a clock, ready to print.
            </p>
            <LinkButton href="/try/" look="main">
              Plan a service
            </LinkButton>
          </section>
          <section className={styles.way}>
            <h2>Your team is here already</h2>
            <p>Your cars, your events, and what was found and done at every service.</p>
            <LinkButton href="/sign-in/">Sign in</LinkButton>
          </section>
        </div>
      </div>
    </PageFrame>
  );
}
