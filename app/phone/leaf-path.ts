import { createContext } from 'react';

/** The address of the page that something stands on, which may be drawn before it is shown. */
export const LeafPath = createContext('/pump');
