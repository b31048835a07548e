import type { Metadata, Viewport } from 'next';
import type { ReactNode } from 'react';
import './globals.css';
import styles from './layout.module.css';
import { Providers } from './providers';

export const metadata: Metadata = {
  title: { default: 'Halfshaft', template: '%s · Halfshaft' },
  description: 'What this car needs at this service, who does it, and when the car must leave.',
  formatDetection: { telephone: false, date: false, address: false, email: false },
};

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  viewportFit: 'cover',
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#20272b' },
    { media: '(prefers-color-scheme: dark)', color: '#0c1012' },
  ],
};

export default function RootLayout({ children }: { children: ReactNode }) {
  return (
    // The theme script marks <html> before React wakes up, which React must not take for a mistake.
    <html lang="en" suppressHydrationWarning>
      <head>
        <script src="/theme.js" />
      </head>
      <body>
        <a className={styles.skip} href="#content">
          Skip to the content
        </a>
        <Providers>{children}</Providers>
      </body>
    </html>
  );
}
