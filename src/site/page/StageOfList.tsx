import { isActiveSidebarItem } from '@docusaurus/plugin-content-docs/client';
import type Category from '@theme/DocSidebarItem/Category';
import DocSidebarItems from '@theme/DocSidebarItems';
import clsx from 'clsx';
import type { ComponentProps } from 'react';

/** A stage of the work in the list of how-to pages. It heads its pages: nothing folds away, and it is no link. */
export function StageOfList({ item, activePath, level }: ComponentProps<typeof Category>) {
  const isHere = isActiveSidebarItem(item, activePath);
  return (
    <li className={`theme-doc-sidebar-item-category theme-doc-sidebar-item-category-level-${level} menu__list-item`}>
      <div className="menu__list-item-collapsible">
        <span className={clsx('menu__link', isHere && 'menu__link--active')}>{item.label}</span>
      </div>
      <ul className="menu__list">
        <DocSidebarItems items={item.items} activePath={activePath} level={level + 1} />
      </ul>
    </li>
  );
}
