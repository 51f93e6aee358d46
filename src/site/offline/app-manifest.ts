import type { HtmlTagObject } from '@docusaurus/types';
import type { Site } from '../../store/site/site.ts';

/** Its name in the built folder. */
export const manifestName = 'app.webmanifest';

/** Pictures of the mark, drawn by `scripts/draw-icons.ts`. A maskable one may be cut to any shape by the device. */
export const icons = [
  { file: 'app-192.png', size: 192, maskable: false },
  { file: 'app-512.png', size: 512, maskable: false },
  { file: 'app-maskable-512.png', size: 512, maskable: true },
] as const;

/**
 * The web app manifest (W3C, Web Application Manifest) by which a device puts the site among its apps. All addresses in it count from where
 * it stands itself, so that it holds in any folder.
 */
export function appManifest({ name, tagline, colours }: Pick<Site, 'name' | 'tagline' | 'colours'>) {
  return {
    id: './',
    name,
    // What stands under an icon is cut after some twelve letters.
    short_name: name.length <= 12 ? name : (name.split(' ')[0] ?? name),
    description: tagline,
    lang: 'en',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: colours.light.paper,
    theme_color: colours.light.paper,
    icons: icons.map(({ file, size, maskable }) => ({
      src: `img/${file}`,
      sizes: `${size}x${size}`,
      type: 'image/png',
      purpose: maskable ? 'maskable' : 'any',
    })),
  };
}

/** What the head of every page says of it. */
export function appTags(folder: string): HtmlTagObject[] {
  return [
    { tagName: 'link', attributes: { rel: 'manifest', href: folder + manifestName } },
    { tagName: 'link', attributes: { rel: 'apple-touch-icon', href: `${folder}img/${icons[0].file}` } },
  ];
}
