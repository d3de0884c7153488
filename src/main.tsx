import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { startDesk } from './desk/startDesk';
import { App } from './screens/App';

const root = document.getElementById('root');
if (!root) throw new Error("index.html has no element 'root' to draw the page in");
void startDesk();
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
