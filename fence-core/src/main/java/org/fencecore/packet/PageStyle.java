package org.fencecore.packet;

/**
 * How the page looks: dark on white, wide tables and drawings in boxes that scroll. On paper there are no boxes, no row of
 * a table is cut and its head is repeated; a drawing has a page of its own across, as large as both Letter and A4 hold.
 * The size of the paper is left to the printer.
 */
final class PageStyle {

    static final String CSS = """
            :root { color-scheme: light; }
            * { box-sizing: border-box; }
            body { margin: 0; font: 1rem/1.45 system-ui, sans-serif; color: #1a1a1a; background: #fff; }
            header, nav, main { max-width: 76rem; margin: 0 auto; padding: 0 1rem; overflow-wrap: anywhere; }
            h1 { font-size: 1.6rem; margin: 1rem 0 .5rem; }
            h2 { font-size: 1.3rem; margin: 2rem 0 .5rem; border-bottom: 2px solid #1a1a1a; }
            h3 { font-size: 1.05rem; margin: 1.2rem 0 .2rem; }
            p { margin: .35rem 0; }
            a { color: #0b4f8a; }
            nav ul { display: flex; flex-wrap: wrap; gap: .3rem 1rem; list-style: none; padding: 0; margin: 0; }
            nav a { display: inline-block; padding: .4rem 0; }
            .skip { position: absolute; left: -999rem; }
            .skip:focus { position: static; }
            .notice { font-weight: bold; color: #fff; background: #8f1515; padding: .5rem .75rem; }
            .note { max-width: 46rem; font-size: .95rem; }
            ul.items { padding-left: 1.2rem; max-width: 46rem; }
            ul.findings { list-style: none; padding: 0; max-width: 46rem; }
            ul.findings li { margin: .4rem 0; padding: .4rem .6rem; border-left: .4rem solid #777; background: #f4f4f4; }
            ul.findings li.warning { border-color: #8a5a00; background: #fff4da; }
            ul.findings li.blocker { border-color: #8f1515; background: #fde8e8; }
            .box { overflow-x: auto; margin: .6rem 0; max-width: 100%; }
            .box:focus-visible { outline: 3px solid #0b4f8a; }
            table { border-collapse: collapse; font-size: .9rem; font-variant-numeric: tabular-nums; }
            caption { text-align: left; font-weight: bold; padding: .2rem 0; }
            .heard { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
            .box { position: relative; }
            th, td { border: 1px solid #999; padding: .25rem .5rem; text-align: left; vertical-align: top;
              white-space: nowrap; }
            thead th { background: #e8e8e8; }
            tbody th { font-weight: normal; }
            tbody tr:nth-child(even) { background: #f6f6f6; }
            .long { white-space: normal; min-width: 17rem; }
            figure { margin: 0 0 1.5rem; }
            figure .box { border: 1px solid #999; }
            figure svg { display: block; max-width: none; }
            summary { padding: .35rem 0; cursor: pointer; }
            @page { margin: 12mm; }
            @page drawing { size: landscape; margin: 2mm; }
            @media print {
              body { font-size: 10pt; }
              nav, .skip { display: none; }
              header, main { max-width: none; padding: 0; }
              h2, h3, caption, figcaption { break-after: avoid; }
              .box { overflow: visible; border: 0; }
              figure { page: drawing; margin: 0; }
              figure .box { border: 0; margin: 0; }
              figcaption { display: none; }
              table { font-size: 8pt; width: 100%; }
              thead { display: table-header-group; }
              tr, li, figure { break-inside: avoid; }
              th, td { white-space: normal; padding: 1pt 3pt; overflow-wrap: anywhere; }
              .long { min-width: 0; }
              figure svg { max-width: 100%; height: auto; max-height: 205mm; margin: 0 auto; }
              .notice { color: #000; background: none; border: 2pt solid #000; }
            }
            """;

    private PageStyle() {}
}
