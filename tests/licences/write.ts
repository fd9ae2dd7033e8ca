import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../docs/workspaceFiles.ts';
import { shippedPackages } from './shippedPackages.ts';
import { thirdParty } from './thirdParty.ts';

writeFileSync(join(root, 'THIRD-PARTY.md'), thirdParty(shippedPackages()));
