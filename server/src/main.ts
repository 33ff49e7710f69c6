import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { giveBackMemoryOnceIdle } from './give-back-memory.ts';
import { nodeFileStore } from './node-file-store.ts';
import { startServer } from './start-server.ts';
import { systemClock } from './today.ts';

startServer(createConnection(ProposedFeatures.all), {
  store: nodeFileStore,
  clock: systemClock(process.env),
  loaded: giveBackMemoryOnceIdle,
});
