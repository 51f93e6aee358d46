// A browser of a metric region, unless a test says otherwise: where nothing is kept, the region gives the units.
Object.defineProperty(navigator, 'languages', { get: () => ['en-GB', 'en'], configurable: true });
