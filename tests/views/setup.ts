import { configure } from '@testing-library/react';
import { afterAll, vi } from 'vitest';

// A busy machine takes its time: what is waited for is late there, and not missing. ms.
configure({ asyncUtilTimeout: 20_000 });

// A browser of a metric region, unless a test says otherwise: where nothing is kept, the region gives the units.
Object.defineProperty(navigator, 'languages', { get: () => ['en-GB', 'en'], configurable: true });

// A view fetches code ahead of its use; what is still on its way when a file ends would fail the run, outside of any test.
afterAll(() => vi.dynamicImportSettled());
