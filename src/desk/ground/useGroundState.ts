import { useStore } from 'zustand';
import { useShallow } from 'zustand/react/shallow';
import { groundStore } from './groundStore';

/** Clear and useful ground, without the place that is read: that changes with every move of the pointer. */
export const useGroundState = () =>
  useStore(
    groundStore,
    useShallow(({ place: _, ...rest }) => rest),
  );
