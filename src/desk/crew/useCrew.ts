import { useStore } from 'zustand';
import { type CrewReadingState, crewReadingStore } from './crewReading';
import { type CrewState, crewStore } from './crewStore';

export const useCrew = <Part>(select: (state: CrewState) => Part): Part => useStore(crewStore, select);
export const useCrewReading = <Part>(select: (state: CrewReadingState) => Part): Part =>
  useStore(crewReadingStore, select);
