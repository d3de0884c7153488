import { StrictMode, useEffect } from 'react';
import { createRoot } from 'react-dom/client';

function App() {
  useEffect(() => {
    document.documentElement.dataset.ready = 'true';
  }, []);
  return <h1>Standclear</h1>;
}

const root = document.getElementById('root');
if (!root) throw new Error("index.html has no element 'root' to draw the page in");
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
