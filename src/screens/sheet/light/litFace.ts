import { useEffect } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import type { FaceNow } from '../../../core/report/light/lightNow';
import { useSession } from '../../../desk/hooks';
import { useLight } from '../../../desk/lightStore';
import { sessionStore } from '../../../desk/sessionStore';
import { lightViewStore } from './view';

/** Chooses a performer: the lamps are told for that face. */
export function choosePerformer(performerId: string): void {
  lightViewStore.setState({ performerId });
  sessionStore.getState().setSelectedId(performerId);
}

/** Follows who is chosen on the roof; a lamp that is chosen changes nobody's face. */
export function useFollowChosen(plan: Plan): void {
  const selectedId = useSession((state) => state.selectedId);
  useEffect(() => {
    if (plan.cast.some(({ id }) => id === selectedId)) lightViewStore.setState({ performerId: selectedId });
  }, [selectedId, plan]);
}

/** The face that the lamps are told for: of whoever was chosen, else the first that is there. */
export function useLitFace(plan: Plan): (FaceNow & { readonly name: string }) | null {
  const performerId = useStore(lightViewStore, (state) => state.performerId);
  const faces = useLight((state) => state.now?.faces);
  const face = faces?.find((each) => each.performerId === performerId) ?? faces?.[0];
  const name = plan.cast.find(({ id }) => id === face?.performerId)?.label;
  return face && name !== undefined ? { ...face, name } : null;
}
