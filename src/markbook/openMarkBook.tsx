import { createRoot } from 'react-dom/client';
import { MarkBook } from './MarkBook.tsx';

createRoot(document.querySelector('#mark-book')!).render(<MarkBook />);
