import type { CDPSession } from '@playwright/test';

interface Node {
  nodeId: string;
  parentId?: string;
  ignored: boolean;
  role?: { value?: string };
  name?: { value?: string };
  backendDOMNodeId?: number;
}

const controls = new Set([
  'button',
  'checkbox',
  'combobox',
  'link',
  'listbox',
  'menuitem',
  'option',
  'radio',
  'searchbox',
  'slider',
  'spinbutton',
  'switch',
  'tab',
  'textbox',
]);
const landmarks = new Set(['banner', 'complementary', 'contentinfo', 'form', 'main', 'navigation', 'region', 'search']);

/** What those who hear a page are told of it: controls and pictures without a name, landmarks that cannot be told apart. */
export interface Spoken {
  controls: string[];
  pictures: string[];
  landmarks: string[];
}

/** Ask the browser for the tree that it hands to a screen reader. */
export async function spoken(session: CDPSession): Promise<Spoken> {
  await session.send('Accessibility.enable');
  const { nodes } = (await session.send('Accessibility.getFullAXTree')) as { nodes: Node[] };
  await session.send('Accessibility.disable');
  const told = nodes.filter((node) => !node.ignored);
  const nameless = (roles: ReadonlySet<string>) =>
    told.filter((node) => roles.has(node.role?.value ?? '') && !node.name?.value?.trim());
  const where = async (node: Node): Promise<string> => {
    const { node: found } = await session
      .send('DOM.describeNode', { backendNodeId: node.backendDOMNodeId ?? 0 })
      .catch(() => ({ node: undefined }));
    const attributes = found?.attributes ?? [];
    const words = attributes.map((word, i) => (i % 2 ? `="${word}" ` : word)).join('');
    return `${node.role?.value} <${found?.localName ?? '?'} ${words.slice(0, 90)}>`;
  };
  const counts = new Map<string, number>();
  for (const node of told) {
    const role = node.role?.value ?? '';
    // A form or a region without a name is no landmark.
    if (!landmarks.has(role) || (['form', 'region'].includes(role) && !node.name?.value?.trim())) continue;
    const key = `${role} “${node.name?.value?.trim() ?? ''}”`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return {
    controls: await Promise.all(nameless(controls).map(where)),
    pictures: await Promise.all(nameless(new Set(['image', 'img', 'graphics-document'])).map(where)),
    landmarks: [...counts].filter(([, count]) => count > 1).map(([key, count]) => `${count} × ${key}`),
  };
}
