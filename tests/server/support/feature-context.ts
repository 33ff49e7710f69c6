import type { IsoDate } from '@plimsoll/language/calendar/iso-date';
import { createPractice } from '@plimsoll/language/create-practice';
import { SessionWorks } from '@plimsoll/language/measures/session-work';
import type { FeatureContext } from '@plimsoll/server/features/context';
import { DEFAULT_SETTINGS, type Settings } from '@plimsoll/server/settings';
import { Sight } from '@plimsoll/server/sight';

export interface ContextOptions {
  readonly complete?: boolean;
  readonly today?: IsoDate;
  readonly settings?: Partial<Settings>;
}

/** What features answer from, without a connection: the given files and nothing else. */
export function createContext(
  files: Readonly<Record<string, string>>,
  { complete = true, today = '2026-11-24', settings = {} }: ContextOptions = {},
): FeatureContext {
  const practice = createPractice();
  for (const [uri, text] of Object.entries(files)) practice.setFile(uri, text);
  return {
    practice,
    works: new SessionWorks(practice),
    workspace: {
      complete,
      versionOf: () => undefined,
      textOf: (uri) => files[uri],
      toClientUri: (uri) => uri,
      complaintAbout: () => undefined,
    },
    sight: new Sight(),
    settings: { ...DEFAULT_SETTINGS, ...settings },
    today,
  };
}
