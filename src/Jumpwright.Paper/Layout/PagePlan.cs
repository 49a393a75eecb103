namespace Jumpwright.Paper.Layout;

/// <summary>Which rows stand on which page.</summary>
internal static class PagePlan
{
    /// <summary>Fills pages from the top. A block is cut only when no page could hold it whole.</summary>
    /// <param name="blocks">In order.</param>
    /// <param name="firstHeight">Room on the first page, pt.</param>
    /// <param name="furtherHeight">Room on each further page, pt.</param>
    public static IReadOnlyList<IReadOnlyList<Row>> Fill(
        IEnumerable<Block> blocks,
        double firstHeight,
        double furtherHeight
    )
    {
        var pages = new List<IReadOnlyList<Row>>();
        var page = new List<Row>();
        double left = firstHeight;

        void Turn()
        {
            pages.Add(page);
            page = [];
            left = furtherHeight;
        }

        foreach (Block block in blocks)
        {
            bool fitsTheNextOnly = block.Height > left && block.Height <= furtherHeight;
            if (page.Count > 0 && (block.OnNewPage || fitsTheNextOnly))
            {
                Turn();
            }

            foreach (Row row in block.Rows)
            {
                if (row.Height > left && page.Count > 0)
                {
                    Turn();
                }

                page.Add(row);
                left -= row.Height;
            }
        }

        pages.Add(page);
        return pages;
    }
}
