export * from '../../solver/document/renaming.ts';
