import { useEffect, useState } from 'react';

/** A kept plan's picture; an empty frame where there is none yet. It says nothing by itself. */
export function PlanPicture({ picture }: { readonly picture: Blob | null }) {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    if (!picture) {
      setAddress(null);
      return;
    }
    const made = URL.createObjectURL(picture);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [picture]);
  return <span className="picture">{address ? <img src={address} alt="" /> : null}</span>;
}
