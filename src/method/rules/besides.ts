/** Id of what is told where a file cannot be read, worked out or finished with, so that no rule was asked. */
export const readable = 'readable';
/** Id of what is found where an exception matches nothing, or may not be made. */
export const exceptionNotNeeded = 'exception-not-needed';
export const exceptionRefused = 'exception-refused';

/** What a check says that no rule of the list finds, by the id that stands beside it. Each is a stop. */
export const besides = [
  {
    id: readable,
    title: 'The file can be read',
    text: 'A method or a shop record that breaks its format, or whose references lead nowhere, is judged by nothing else until it is mended. The line and the column say where.',
  },
  {
    id: exceptionNotNeeded,
    title: 'An exception is needed',
    text: 'A method may depart from most rules: it names the rule, the step and the reason, and the reason is printed with it. Once the rule finds nothing there any more, the exception itself is a fault.',
  },
  {
    id: exceptionRefused,
    title: 'An exception is allowed',
    text: 'From some rules no method may depart; each says why. An exception from one of them is a fault, and what it would have excused stands.',
  },
] as const;
