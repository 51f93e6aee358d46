import { cautionById } from '../../model/evidence/cautions.ts';
import { type SourceId, shortSource, sources } from '../../model/evidence/index.ts';
import { finishPartOf, resinPartOf } from '../../model/finish/food-board.ts';
import { finishById, finishes } from '../../model/finish/kinds.ts';
import { type BoardForFood, foodKinds, resinPlaces } from '../../model/food/index.ts';
import { resolveSpecies } from '../../model/species/resolve.ts';
import { figureNames, type SpeciesDossier } from '../../model/species/types.ts';
import { woodPartOf } from '../../model/species/wood-part.ts';
import { readAllTables, readRecords, speciesRecords } from '../../store/index.ts';
import { bringFormulas } from './bring-formulas.ts';
import { bringParts } from './bring-parts.ts';
import { foldCalculators } from './fold-calculators.ts';
import { attribute, fail, give, isPart, literalOf, type PageFile, type PageNode } from './mdx-tree.ts';
import { quoteMethods } from './quote-methods.ts';

let woods: Map<string, SpeciesDossier> | undefined;

/** Every wood by id, read once a build. */
function woodById(id: string): SpeciesDossier | undefined {
  woods ??= new Map(resolveSpecies(readRecords(speciesRecords), readAllTables()).map((wood) => [wood.id, wood]));
  return woods.get(id);
}

/**
 * Look up the figures of woods and methods that a how-to page names while it is compiled, and what its calculators begin with.
 *
 * A number then travels with the page that shows it, and a name that no record has stops the build at its line. A
 * directive that nothing handled, which would be left out of the page in silence, stops it too. Calculators of one kind on
 * a page are told apart and worked out, and the answers to its questions stand once more at its end, for paper.
 */
export function remarkHandbook() {
  return async (tree: PageNode, file: PageFile): Promise<void> => {
    visit(tree, file);
    await quoteMethods(tree, file);
    tellApart(tree, new Map());
    foldCalculators(tree, file);
    bringAnswersLast(tree, file);
    bringParts(tree);
    bringFormulas(tree);
  };
}

function visit(node: PageNode, file: PageFile): void {
  if (isPart(node)) resolve(node, file);
  if ((node.type === 'containerDirective' || node.type === 'leafDirective') && !node.data) {
    fail(node, file, `the directive “${node.name}” is not known. Use note, tip, info, warning or danger.`);
  }
  for (const child of node.children ?? []) visit(child, file);
}

function resolve(node: PageNode, file: PageFile): void {
  if (node.name === 'FoodContact') {
    give(node, JSON.stringify(boardOf(node, file)));
    return;
  }
  if (node.name === 'Cite') {
    const source = attribute(node, 'source');
    if (!sources.some(({ id }) => id === source)) fail(node, file, `“${source}” is not a source.`);
    give(node, shortSource(source as SourceId));
    return;
  }
  if (node.name === 'Cautions') {
    const ids = literalOf(node, 'ids', file) as string[];
    const cautions = ids.map((id) => cautionById(id) ?? fail(node, file, `there is no caution “${id}”.`));
    give(node, JSON.stringify(cautions));
    return;
  }
  if (node.name !== 'Figure' && node.name !== 'Wood') return;
  const id = attribute(node, node.name === 'Figure' ? 'species' : 'id');
  const wood = woodById(id);
  if (!wood) fail(node, file, `“${id}” is not the id of a wood. Look it up in src/model/species/records.`);
  if (node.name === 'Wood') {
    give(node, wood.name);
    return;
  }
  const name = figureNames.find((one) => one === attribute(node, 'name'));
  if (!name) fail(node, file, `“${attribute(node, 'name')}” is not a figure. Use one of ${figureNames.join(', ')}.`);
  give(node, JSON.stringify(wood.figures[name]));
}

/** The board of which a page says what may stand on its label: the parts that it names, by their ids. */
function boardOf(node: PageNode, file: PageFile): Omit<BoardForFood, 'market'> {
  const named = (name: string) => attribute(node, name) || undefined;
  const wood = named('wood');
  const dossier = wood ? woodById(wood) : undefined;
  if (wood && !dossier) fail(node, file, `“${wood}” is not the id of a wood. Look it up in src/model/species/records.`);
  const finish = named('finish');
  const kind = finish ? finishById(finish) : undefined;
  if (finish && !kind) {
    fail(node, file, `“${finish}” is not a finish. Use one of ${finishes.map(({ id }) => id).join(', ')}.`);
  }
  const place = resinPlaces.find((one) => one === named('resin'));
  if (named('resin') && !place) fail(node, file, `resin is where it lies: one of ${resinPlaces.join(', ')}.`);
  const food = foodKinds.find((one) => one === (named('food') ?? 'dry'));
  if (!food) fail(node, file, `“${named('food')}” is not a kind of food. Use one of ${foodKinds.join(', ')}.`);
  return {
    food,
    ...(dossier ? { wood: woodPartOf(dossier) } : {}),
    ...(kind ? { finish: finishPartOf(kind, { declared: false }) } : {}),
    ...(place ? { resin: resinPartOf(undefined, place, { declared: false }) } : {}),
  };
}

/**
 * Give the second calculator of a kind on a page a number of its own, the third another: or what is typed into one would
 * be read by all.
 */
function tellApart(node: PageNode, counts: Map<string, number>): void {
  if (node.type === 'mdxJsxFlowElement' && node.name === 'Calculator') {
    const id = attribute(node, 'id');
    const count = (counts.get(id) ?? 0) + 1;
    counts.set(id, count);
    if (count > 1) {
      node.attributes?.push({ type: 'mdxJsxAttribute', name: 'ordinal', value: String(count) });
      node.attributes?.unshift({ type: 'mdxJsxAttribute', name: 'prefix', value: `${id}-${count}` });
    }
  }
  for (const child of node.children ?? []) tellApart(child, counts);
}

/** Put the answers of a page at its end too, where paper gets a sheet of them that a teacher can keep back. */
function bringAnswersLast(tree: PageNode, file: PageFile): void {
  const answers: PageNode[] = [];
  const walk = (node: PageNode): void => {
    if (node.type === 'mdxJsxFlowElement' && node.name === 'Answers') answers.push(...(node.children ?? []));
    for (const child of node.children ?? []) walk(child);
  };
  walk(tree);
  if (answers.length === 0) return;
  const title = file.data?.frontMatter?.title;
  tree.children?.push({
    type: 'mdxJsxFlowElement',
    name: 'AnswersSheet',
    attributes: typeof title === 'string' ? [{ type: 'mdxJsxAttribute', name: 'title', value: title }] : [],
    children: structuredClone(answers),
  });
}
