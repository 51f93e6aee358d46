import {
  autocompletion,
  type CompletionContext,
  type CompletionResult,
  completionKeymap,
} from '@codemirror/autocomplete';
import {
  defaultKeymap,
  history,
  historyField,
  historyKeymap,
  redo,
  redoDepth,
  undo,
  undoDepth,
} from '@codemirror/commands';
import { yaml } from '@codemirror/lang-yaml';
import { bracketMatching, indentUnit } from '@codemirror/language';
import { type Diagnostic, forEachDiagnostic, linter, lintGutter, lintKeymap, setDiagnostics } from '@codemirror/lint';
import { EditorState, type Extension, Transaction } from '@codemirror/state';
import {
  EditorView,
  highlightActiveLineGutter,
  hoverTooltip,
  keymap,
  lineNumbers,
  type Tooltip,
} from '@codemirror/view';
import type { Completions, EditProblem, Hover, Splice } from '../../method/edit/index.ts';
import { editorLook } from './editor-look.ts';
import { fieldWords, levelWords } from './levels.ts';

interface EditorOptions {
  /** An element inside the shadow root. */
  parent: HTMLElement;
  root: ShadowRoot;
  text: string;
  /** What could be undone when this very text was stored. */
  history?: unknown;
  readOnly: boolean;
  /** Name for whoever hears it. */
  label: string;
  /** The text after a change, and what writes down what can be undone. */
  onChange: (text: string, history: () => unknown) => void;
  onUndoable: (can: { undo: boolean; redo: boolean }) => void;
  complete: (text: string, offset: number) => Promise<Completions | undefined>;
  hover: (text: string, offset: number) => Promise<Hover | undefined>;
}

/** What the page around does with an editor. */
export interface EditorHandle {
  text(): string;
  /** Make an edit that can be undone. Its offsets count in the text as it stands. */
  apply(splices: readonly Splice[]): void;
  /** Mark what is wrong, if this is still the text that was looked at. */
  show(problems: readonly EditProblem[], text: string): void;
  /** Put the caret on a problem that is shown, and the focus into the text. */
  goTo(problem: EditProblem): void;
  undo(): void;
  redo(): void;
  destroy(): void;
}

const severity = { error: 'error', stop: 'error', warn: 'warning', note: 'info' } as const;

/** A diagnostic with the problem that it shows. */
interface Shown extends Diagnostic {
  problem: EditProblem;
}

function shown(problem: EditProblem, length: number): Shown {
  const { from, to, level, message, excepted, fixes } = problem;
  const fitting = (offset: number) => Math.max(0, Math.min(length, offset));
  return {
    problem,
    from: fitting(from),
    to: Math.max(fitting(from), fitting(to)),
    severity: excepted === undefined ? severity[level] : 'info',
    message: `${levelWords(problem)}: ${fieldWords(problem)}${message}`,
    actions: fixes.map(({ title, splice }) => ({
      name: title,
      // The place may have moved since: the stretch moves along with it, and its splice is laid from its start.
      apply: (view, at) => {
        const moved = at - fitting(from);
        view.dispatch({
          changes: { from: splice.from + moved, to: splice.to + moved, insert: splice.insert },
          userEvent: 'input.fix',
        });
      },
    })),
  };
}

/** What may be written at the caret; while somebody types only where something is begun or asked for. */
async function completionsAt(
  { state, pos, explicit }: CompletionContext,
  complete: EditorOptions['complete'],
): Promise<CompletionResult | null> {
  const found = await complete(state.doc.toString(), pos);
  if (!found || found.from > pos) return null;
  const typed = state.sliceDoc(found.from, pos);
  if (!explicit && found.options.some(({ insert, label }) => insert === typed || label === typed)) return null;
  return {
    from: found.from,
    to: Math.max(pos, found.to),
    options: found.options.map(({ label, detail, info, insert, sort }, at) => ({
      label,
      apply: insert,
      type: sort === 'name' ? 'property' : 'constant',
      boost: Math.max(-99, 50 - at),
      ...(detail === undefined ? {} : { detail }),
      ...(info === undefined ? {} : { info }),
    })),
    validFor: /^[\w\-/.~]*$/,
  };
}

function words({ title, words: paragraphs }: Hover): HTMLElement {
  const box = document.createElement('div');
  box.className = 'cm-hoverWords';
  const head = document.createElement('strong');
  head.textContent = title;
  box.append(head);
  for (const words of paragraphs) {
    const paragraph = document.createElement('p');
    paragraph.textContent = words;
    box.append(paragraph);
  }
  return box;
}

const hovering = (hover: EditorOptions['hover']): Extension =>
  hoverTooltip(async (view, pos): Promise<Tooltip | null> => {
    const text = view.state.doc.toString();
    const found = await hover(text, pos);
    if (!found || view.state.doc.length < found.to) return null;
    return { pos: found.from, end: found.to, above: true, create: () => ({ dom: words(found) }) };
  });

/** The text with what could be undone in it; without, where what was stored does not fit. */
function stateOf(text: string, stored: unknown, extensions: Extension): EditorState {
  if (typeof stored === 'object' && stored !== null) {
    try {
      return EditorState.fromJSON({ ...stored, doc: text }, { extensions }, { history: historyField });
    } catch {
      // Written by another version of the editor: the text is what counts.
    }
  }
  return EditorState.create({ doc: text, extensions });
}

/** A text editor for a method. In a shadow root its styles need no permission of the page. */
export function createEditor(options: EditorOptions): EditorHandle {
  const { parent, root, text, readOnly, label, onChange, onUndoable, complete, hover } = options;
  const tellUndoable = (state: EditorState) => onUndoable({ undo: undoDepth(state) > 0, redo: redoDepth(state) > 0 });
  const extensions: Extension = [
    lineNumbers(),
    highlightActiveLineGutter(),
    history(),
    yaml(),
    bracketMatching(),
    indentUnit.of('  '),
    EditorView.lineWrapping,
    EditorState.readOnly.of(readOnly),
    EditorView.contentAttributes.of({
      'aria-label': label,
      'aria-multiline': 'true',
      autocapitalize: 'off',
      // What scrolls must hold something that takes the focus, and not every tool counts an editable text as such.
      tabindex: '0',
      ...(readOnly ? { 'aria-readonly': 'true' } : {}),
    }),
    autocompletion({
      override: [(context) => completionsAt(context, complete)],
      // Enter ends the line unless somebody has gone down to an offer.
      selectOnOpen: false,
      icons: false,
    }),
    hovering(hover),
    linter(null),
    lintGutter(),
    keymap.of([...completionKeymap, ...lintKeymap, ...historyKeymap, ...defaultKeymap]),
    editorLook,
    EditorView.updateListener.of(({ docChanged, state }) => {
      if (!docChanged) return;
      tellUndoable(state);
      onChange(state.doc.toString(), () => {
        const { doc: _, ...rest } = state.toJSON({ history: historyField });
        return rest;
      });
    }),
  ];
  const view = new EditorView({ state: stateOf(text, options.history, extensions), root, parent });
  tellUndoable(view.state);
  return {
    text: () => view.state.doc.toString(),
    apply(splices) {
      view.dispatch({
        changes: splices.map(({ from, to, insert }) => ({ from, to, insert })),
        annotations: Transaction.userEvent.of('input.form'),
      });
    },
    show(problems, looked) {
      if (view.state.doc.toString() !== looked) return;
      const { length } = view.state.doc;
      view.dispatch(
        setDiagnostics(
          view.state,
          problems.map((problem) => shown(problem, length)),
        ),
      );
    },
    goTo(problem) {
      let anchor = Math.min(problem.from, view.state.doc.length);
      forEachDiagnostic(view.state, (diagnostic, from) => {
        if ((diagnostic as Shown).problem === problem) anchor = from;
      });
      view.dispatch({ selection: { anchor }, effects: EditorView.scrollIntoView(anchor, { y: 'center' }) });
      view.focus();
    },
    undo: () => undo(view) && view.focus(),
    redo: () => redo(view) && view.focus(),
    destroy: () => view.destroy(),
  };
}
