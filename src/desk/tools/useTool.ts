import { useStore } from 'zustand';
import { type SnapSettings, snapSettings } from './snapSettings';
import { type ToolState, toolStore } from './toolStore';

export const useTool = <Part>(select: (state: ToolState) => Part): Part => useStore(toolStore, select);
export const useSnapSettings = <Part>(select: (state: SnapSettings) => Part): Part =>
  useStore(snapSettings, select);
