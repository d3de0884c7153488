declare module 'gltf-validator' {
  interface ValidationMessage {
    readonly code: string;
    readonly message: string;
    /** 0 error, 1 warning, 2 information, 3 hint. */
    readonly severity: number;
    readonly pointer?: string;
  }
  interface ValidationReport {
    readonly issues: {
      readonly numErrors: number;
      readonly numWarnings: number;
      readonly messages: readonly ValidationMessage[];
    };
  }
  export function validateBytes(
    data: Uint8Array,
    options?: { readonly maxIssues?: number },
  ): Promise<ValidationReport>;
}
