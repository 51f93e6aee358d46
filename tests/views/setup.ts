import { configure } from '@testing-library/react';

// A busy machine takes its time: what is waited for is late there, and not missing. ms.
configure({ asyncUtilTimeout: 20_000 });

// A browser of a metric region, unless a test says otherwise: where nothing is kept, the region gives the units.
Object.defineProperty(navigator, 'languages', { get: () => ['en-GB', 'en'], configurable: true });
