import { homedir } from 'node:os';
import { join } from 'node:path';

/** Where a user's settings are kept on this system; `HALFPIN_CONFIG_DIR` names another place. */
export const configFolder = (environment: NodeJS.ProcessEnv, platform: NodeJS.Platform): string => {
  const { HALFPIN_CONFIG_DIR, XDG_CONFIG_HOME, APPDATA } = environment;
  if (HALFPIN_CONFIG_DIR) return HALFPIN_CONFIG_DIR;
  if (platform === 'win32') return join(APPDATA || join(homedir(), 'AppData', 'Roaming'), 'Halfpin');
  if (platform === 'darwin') return join(homedir(), 'Library', 'Application Support', 'Halfpin');
  return join(XDG_CONFIG_HOME || join(homedir(), '.config'), 'halfpin');
};
