/**
 * The icons, drawn once per page and used by id: a field of 24 units, lines of 1.5, square ends, mitred corners,
 * and one ink point in each.
 */
export function IconSprite() {
  return (
    <svg className="vh" aria-hidden="true">
      <symbol id="i-stand" viewBox="0 0 24 24">
        <path d="M12 5v15.5M12 9.5 5 20.5M12 9.5l7 11M8.2 15.5h7.6" />
        <circle className="pt" cx="12" cy="3.6" r="1.9" />
      </symbol>
      <symbol id="i-head" viewBox="0 0 24 24">
        <path d="M3.5 8.5h10v8h-10zM13.5 8.5l4-5M13.5 16.5l4 5M8.5 16.5v5M5.5 21.5h6M17 12.5h5M17 9.8l4.2-1.8M17 15.2l4.2 1.8" />
        <circle className="pt" cx="9.5" cy="12.5" r="1.8" />
      </symbol>
      <symbol id="i-flag" viewBox="0 0 24 24">
        <path d="M3.5 4.5h12v12h-12zM3.5 10.5l6-6M3.5 16.5l12-12M9.5 16.5l6-6M15.5 8H20M20 8v13" />
        <circle className="pt" cx="20" cy="8" r="1.8" />
      </symbol>
      <symbol id="i-bounce" viewBox="0 0 24 24">
        <path d="m14 3.5 5 1.2-3.4 15.8-5-1.2zM4.5 6.5l8 4.6-8 6.4M4.5 13.4v4.1h4" />
        <circle className="pt" cx="4" cy="6.2" r="1.7" />
      </symbol>
      <symbol id="i-practical" viewBox="0 0 24 24">
        <path d="M12 2.5V7M9.8 7h4.4v3H9.8z" />
        <circle cx="12" cy="15" r="5" />
        <circle className="pt" cx="12" cy="15" r="1.8" />
      </symbol>
      <symbol id="i-fence" viewBox="0 0 24 24">
        <path d="M3.5 3.5v17M20.5 3.5v17M3.5 6h17M3.5 18h17M3.5 12l6-6M6 18 18 6M14.5 18l6-6M3.5 12l6 6M6 6l12 12M14.5 6l6 6" />
        <circle className="pt" cx="12" cy="12" r="1.8" />
      </symbol>
      <symbol id="i-post" viewBox="0 0 24 24">
        <path d="M5 5.5h14M12 5.5v15M8.5 20.5h7M17.5 5.5v4" />
        <circle className="pt" cx="17.5" cy="11" r="1.7" />
      </symbol>
      <symbol id="i-performer" viewBox="0 0 24 24">
        <path d="M8.7 11.5C5.5 11.7 3 13.2 3 15.3 3 17.9 7 19.5 12 19.5s9-1.6 9-4.2c0-2.1-2.5-3.6-5.7-3.8" />
        <circle cx="12" cy="12.3" r="3.6" />
        <circle className="pt" cx="12" cy="5.5" r="1.7" />
      </symbol>
      <symbol id="i-camera" viewBox="0 0 24 24">
        <path d="M8 12.5h8v8H8zM9.8 12.5V9.8h4.4v2.7M10 9.8 4.5 2.5M14 9.8l5.5-7.3" />
        <circle className="pt" cx="12" cy="16.5" r="1.7" />
      </symbol>
      <symbol id="i-track" viewBox="0 0 24 24">
        <path d="M2.5 8.5h19M2.5 15.5h19M5.5 6v12M18.5 6v12M12 6v3.5M12 14.5V18" />
        <circle className="pt" cx="12" cy="12" r="1.8" />
      </symbol>
      <symbol id="i-generator" viewBox="0 0 24 24">
        <path d="M3.5 7.5h17v10h-17zM7.5 7.5v-3h9v3M6.5 17.5v3M17.5 17.5v3M6 12.5c.9-2.7 2.3-2.7 3.2 0s2.3 2.7 3.2 0" />
        <circle className="pt" cx="16.8" cy="12.5" r="1.7" />
      </symbol>
      <symbol id="i-cable" viewBox="0 0 24 24">
        <circle cx="10.5" cy="11" r="7.2" />
        <circle cx="10.5" cy="11" r="3.6" />
        <path d="M10.5 18.2h8" />
        <circle className="pt" cx="20" cy="18.2" r="1.7" />
      </symbol>
      <symbol id="i-cart" viewBox="0 0 24 24">
        <path d="M2 4.5h3v12.5h15V6.5M5 11h15" />
        <circle cx="8.5" cy="19.3" r="2" />
        <circle className="pt" cx="16.5" cy="19.3" r="2.1" />
      </symbol>
      <symbol id="i-ladder" viewBox="0 0 24 24">
        <path d="M9.5 5.5 6 21M14.5 5.5 18 21M8.7 9.5h6.6M7.8 13.5h8.4M6.9 17.5h10.2" />
        <circle className="pt" cx="12" cy="4.5" r="1.7" />
      </symbol>
      <symbol id="i-tape" viewBox="0 0 24 24">
        <circle cx="9" cy="10.5" r="6.5" />
        <path d="M9 17h12.5v-3.2M13.5 17v-2M17.5 17v-2" />
        <circle className="pt" cx="9" cy="10.5" r="1.8" />
      </symbol>
      <symbol id="i-undo" viewBox="0 0 24 24">
        <path d="M8.5 4.5 4 9l4.5 4.5M4 9h10.5a5 5 0 0 1 0 10H11" />
        <circle className="pt" cx="8.2" cy="19" r="1.7" />
      </symbol>
      <symbol id="i-redo" viewBox="0 0 24 24">
        <path d="M15.5 4.5 20 9l-4.5 4.5M20 9H9.5a5 5 0 0 0 0 10H13" />
        <circle className="pt" cx="15.8" cy="19" r="1.7" />
      </symbol>
      <symbol id="i-play" viewBox="0 0 24 24">
        <path d="M9 5v14l11-7z" />
        <circle className="pt" cx="4.8" cy="12" r="1.7" />
      </symbol>
      <symbol id="i-night" viewBox="0 0 24 24">
        <path d="M15.5 3.8a8.6 8.6 0 1 0 5 11.2 7 7 0 0 1-5-11.2z" />
        <circle className="pt" cx="19" cy="6" r="1.6" />
      </symbol>
      <symbol id="i-link" viewBox="0 0 24 24">
        <path d="M3.5 3.5h7v7h-7zM13.5 3.5h7v7h-7zM3.5 13.5h7v7h-7zM13.5 13.5h3M20.5 13.5v3M13.5 17v3.5h3.5" />
        <circle className="pt" cx="19" cy="19.5" r="1.6" />
      </symbol>
      <symbol id="i-wall" viewBox="0 0 24 24">
        <path d="M3.5 6.5h17v11h-17zM3.5 12h17M9 6.5V12M15 6.5V12M6.5 12v5.5M17.5 12v5.5" />
        <circle className="pt" cx="12" cy="14.8" r="1.5" />
      </symbol>
      <symbol id="i-block" viewBox="0 0 24 24">
        <path d="M3.5 20.5v-9h5v-7h7v10h5v6M11 8h2M11 11.5h2" />
        <circle className="pt" cx="18" cy="17.5" r="1.5" />
      </symbol>
      <symbol id="i-deck" viewBox="0 0 24 24">
        <path d="M3 16.5 8 6.5h13l-5 10zM5.5 11.5h13M12.3 16.5l5-10" />
        <circle className="pt" cx="7.5" cy="20.5" r="1.6" />
      </symbol>
      <symbol id="i-parapet" viewBox="0 0 24 24">
        <path d="M3.5 9.5v11h17v-11zM2 9.5V6.5h20v3zM7 20.5l7-11M13 20.5l7-11" />
        <circle className="pt" cx="12" cy="3.4" r="1.6" />
      </symbol>
      <symbol id="i-stairhouse" viewBox="0 0 24 24">
        <path d="M3.5 20.5V6.5l11-2.5v16.5zM6.5 20.5v-9h5v9M14.5 20.5h6" />
        <circle className="pt" cx="18.5" cy="8" r="1.7" />
      </symbol>
      <symbol id="i-tank" viewBox="0 0 24 24">
        <path d="M5.5 4.5h13v9h-13zM9.8 4.5v9M14.2 4.5v9M7.5 13.5v7M16.5 13.5v7M7.5 20.5l9-7" />
        <circle className="pt" cx="12" cy="2.2" r="1.5" />
      </symbol>
      <symbol id="i-model" viewBox="0 0 24 24">
        <path d="M12 8v7.5m-3.5-3.5L12 15.5l3.5-3.5M4 12.5v8h16v-8" />
        <circle className="pt" cx="12" cy="4.5" r="1.7" />
      </symbol>
      <symbol id="i-overhead" viewBox="0 0 24 24">
        <path d="M3.5 5.5h17v13h-17zM12 18.5 7 5.5M12 18.5l5-13" />
        <circle className="pt" cx="12" cy="9.5" r="1.7" />
      </symbol>
      <symbol id="i-setups" viewBox="0 0 24 24">
        <path d="M3.5 4.5h17v7h-17zM3.5 15h17M3.5 19h11" />
        <circle className="pt" cx="12" cy="8" r="1.7" />
      </symbol>
      <symbol id="i-times" viewBox="0 0 24 24">
        <path d="M2.5 16.5h19M5.5 16.5a6.5 6.5 0 0 1 13 0M6 20.5h12M12 3.5V7" />
        <circle className="pt" cx="18.5" cy="6.5" r="1.7" />
      </symbol>
      <symbol id="i-day" viewBox="0 0 24 24">
        <circle cx="12" cy="12" r="4.6" />
        <path d="M12 1.5v3M12 19.5v3M1.5 12h3M19.5 12h3M4.6 4.6l2.1 2.1M17.3 17.3l2.1 2.1M4.6 19.4l2.1-2.1M17.3 6.7l2.1-2.1" />
        <circle className="pt" cx="12" cy="12" r="1.7" />
      </symbol>
    </svg>
  );
}
