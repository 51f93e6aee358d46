import { HighlightStyle, syntaxHighlighting } from '@codemirror/language';
import type { Extension } from '@codemirror/state';
import { EditorView } from '@codemirror/view';
import { tags } from '@lezer/highlight';

/** Inks of the text; by tokens of the site, which reach into a shadow root as its rules do not. */
const inks = HighlightStyle.define([
  { tag: tags.comment, color: 'var(--kerf-muted)', fontStyle: 'italic' },
  { tag: [tags.propertyName, tags.definition(tags.propertyName)], color: 'var(--kerf-accent)' },
  { tag: [tags.string, tags.content, tags.attributeValue], color: 'var(--kerf-ink)' },
  { tag: [tags.punctuation, tags.separator, tags.squareBracket, tags.brace], color: 'var(--kerf-muted)' },
]);

const tooltip = {
  border: '1px solid var(--kerf-field-edge)',
  backgroundColor: 'var(--kerf-card)',
  color: 'var(--kerf-ink)',
  fontFamily: 'var(--kerf-sans)',
  fontSize: '0.9rem',
};

/** A line under what is wrong, of another form for each level, so that no colour alone tells it. */
const under = (style: string, colour: string) => ({
  backgroundImage: 'none',
  textDecoration: `underline ${style} ${colour} 2px`,
  textUnderlineOffset: '3px',
  textDecorationSkipInk: 'none',
});

const marker = (sign: string, colour: string) => ({
  content: `"${sign}"`,
  color: colour,
  fontFamily: 'var(--kerf-sans)',
  fontWeight: '700',
  textAlign: 'center',
});

const theme = EditorView.theme({
  '&': {
    color: 'var(--kerf-ink)',
    backgroundColor: 'var(--kerf-field)',
    border: '1px solid var(--kerf-field-edge)',
    fontSize: '0.95rem',
    maxHeight: 'var(--bench-height)',
  },
  '&.cm-focused': { outline: '3px solid var(--kerf-focus)', outlineOffset: '1px' },
  '.cm-scroller': { fontFamily: 'var(--kerf-mono)', lineHeight: '1.5', overflow: 'auto' },
  '.cm-content': { caretColor: 'var(--kerf-ink)', padding: '0.5rem 0', minHeight: '14rem' },
  '.cm-cursor': { borderLeftColor: 'var(--kerf-ink)' },
  '.cm-gutters': {
    backgroundColor: 'var(--kerf-wash)',
    color: 'var(--kerf-muted)',
    borderRight: '1px solid var(--kerf-rule)',
  },
  '.cm-activeLineGutter': { backgroundColor: 'transparent', color: 'var(--kerf-ink)', fontWeight: '700' },
  '&.cm-focused .cm-matchingBracket': { backgroundColor: 'transparent', outline: '1px solid var(--kerf-focus)' },
  '&.cm-focused .cm-nonmatchingBracket': {
    backgroundColor: 'transparent',
    outline: '1px dashed var(--kerf-caution-ink)',
  },
  '.cm-gutter-lint': { width: '1.3em' },
  '.cm-gutter-lint .cm-gutterElement': { padding: '0' },
  '.cm-lint-marker': { width: '1.3em', height: 'auto' },
  '.cm-lint-marker-error': marker('×', 'var(--kerf-caution-ink)'),
  '.cm-lint-marker-warning': marker('!', 'var(--kerf-doubt-ink)'),
  '.cm-lint-marker-info': marker('i', 'var(--kerf-muted)'),
  '.cm-lintRange-error': under('wavy', 'var(--kerf-caution-ink)'),
  '.cm-lintRange-warning': under('dashed', 'var(--kerf-doubt-ink)'),
  '.cm-lintRange-info': under('dotted', 'var(--kerf-muted)'),
  '.cm-lintRange-active': { backgroundColor: 'var(--kerf-wash)' },
  '.cm-tooltip': tooltip,
  '.cm-tooltip-lint': { padding: '0' },
  '.cm-diagnostic': { padding: '0.4rem 0.6rem', whiteSpace: 'pre-wrap', maxWidth: 'min(34rem, 80vw)' },
  '.cm-diagnostic-error': { borderLeftColor: 'var(--kerf-caution-ink)' },
  '.cm-diagnostic-warning': { borderLeftColor: 'var(--kerf-doubt-ink)' },
  '.cm-diagnostic-info': { borderLeftColor: 'var(--kerf-muted)' },
  '.cm-diagnosticAction': {
    minHeight: '44px',
    padding: '0 0.8rem',
    border: '1px solid var(--kerf-field-edge)',
    borderRadius: '4px',
    backgroundColor: 'transparent',
    color: 'var(--kerf-ink)',
    font: 'inherit',
  },
  '.cm-tooltip.cm-tooltip-autocomplete > ul': {
    fontFamily: 'var(--kerf-sans)',
    maxHeight: '14em',
    maxWidth: 'min(34rem, 85vw)',
  },
  '.cm-tooltip.cm-tooltip-autocomplete > ul > li': {
    padding: '0.45rem 0.6rem',
    lineHeight: '1.35',
    overflow: 'hidden',
    textOverflow: 'ellipsis',
  },
  '.cm-tooltip.cm-tooltip-autocomplete > ul > li[aria-selected]': {
    backgroundColor: 'var(--kerf-accent)',
    color: 'var(--kerf-paper)',
  },
  '.cm-completionDetail': { fontStyle: 'normal', opacity: '0.9', marginLeft: '0.6em' },
  '.cm-completionMatchedText': { textDecoration: 'none', fontWeight: '700' },
  '.cm-tooltip.cm-completionInfo': { padding: '0.4rem 0.6rem', maxWidth: 'min(22rem, 80vw)' },
  '.cm-hoverWords': { padding: '0.4rem 0.6rem', maxWidth: 'min(28rem, 80vw)' },
  '.cm-hoverWords p': { margin: '0.2rem 0 0' },
  '@media (forced-colors: active)': {
    '.cm-tooltip.cm-tooltip-autocomplete > ul > li[aria-selected]': {
      forcedColorAdjust: 'none',
      backgroundColor: 'Highlight',
      color: 'HighlightText',
    },
  },
});

export const editorLook: Extension = [theme, syntaxHighlighting(inks)];
