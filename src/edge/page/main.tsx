import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/controls.css';
import './styles/frame.css';
import './styles/shelf.css';
import './styles/inside.css';
import './styles/cableTable.css';
import './styles/cableBlocks.css';
import './styles/sheet.css';
import './styles/print.css';
import { render } from 'preact';
import { App } from './app.tsx';
import { followPrinting } from './store/media.ts';
import { followLinks } from './store/route.ts';

followLinks();
followPrinting();
render(<App />, document.getElementById('page')!);
