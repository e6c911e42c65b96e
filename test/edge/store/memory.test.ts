import { openMemoryStore } from '../../../src/edge/store/memory/open.ts';
import { storeContract } from '../../contract/store.ts';

storeContract('memory', async () => openMemoryStore());
