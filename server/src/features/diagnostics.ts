import type { Severity } from '@plimsoll/language/model/source';
import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver';
import { type FileProblem, listProblems } from '../problems.ts';
import { type FeatureContext, toRange } from './context.ts';

const SEVERITIES: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  info: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
};

/** Everything that is wrong in a file, as the editor underlines and lists it. */
export function provideDiagnostics(
  { works, workspace, settings, today }: FeatureContext,
  uri: string,
): Diagnostic[] {
  const complaint = workspace.complaintAbout(uri);
  const problems = listProblems(works, uri, {
    today,
    complete: workspace.complete,
    severities: settings.severities,
  });
  return [...(complaint === undefined ? [] : [toFileDiagnostic(complaint)]), ...problems.map(toDiagnostic)];
}

export function toDiagnostic({ entryLine, problem }: FileProblem): Diagnostic {
  return {
    range: toRange(entryLine, problem.span),
    severity: SEVERITIES[problem.severity],
    code: problem.code,
    source: 'plimsoll',
    message: problem.message,
  };
}

function toFileDiagnostic(message: string): Diagnostic {
  const start = { line: 0, character: 0 };
  return {
    range: { start, end: start },
    severity: DiagnosticSeverity.Warning,
    code: 'unreadable-file',
    source: 'plimsoll',
    message,
  };
}
