namespace Nookwright.Planning;

/// <summary>Takes some items of one material out of their sheets, for <see cref="RuinAndRecreate"/> to put back better.</summary>
internal sealed class Removal(Job job, Layout layout, Random random, string material)
{
    // By trial on the hardest of the public instances, and of ordinary jobs for what keeps an order of visits, which asks for
    // more to be taken out at once; kept where the sum of sheets fell. No source gives them for this search.
    private const int Most = 14;
    private const int MostInOrder = 20;
    private const int StepsToPutBack = 10;

    // A sheet that is taken to the saw as it comes has no other way to be broken down.
    private readonly bool _isBrokenDown = layout.Sheets.Any(s => s.Stock.Material == material && s.RootCount > 1);

    // Of few items never all at once, or nothing is left to build on: half at most.
    private readonly int _most = Math.Clamp(
        job.Items.Count(i => i.Material == material) / 2,
        2,
        job.HasOrder ? MostInOrder : Most
    );

    /// <summary>Takes a few items out of some sheets, now and then all of one sheet. They wait in the layout.</summary>
    /// <param name="window">The sheets it may take from.</param>
    /// <param name="remember">Told of each sheet before it changes.</param>
    public void Take(IReadOnlyList<SheetLayout> window, Action<SheetLayout> remember)
    {
        if (!_isBrokenDown || random.Next(StepsToPutBack) > 0 || !PutOneBack(window, remember))
            TakeSomeOut(window, remember);
    }

    /// <summary>
    /// Puts a sheet back on the pile, so that one is broken down anew where that helps: how it was, was drawn by lot when it held
    /// a single item, and may leave a piece too narrow for what would fill it. False where a blank is kept on it.
    /// </summary>
    private bool PutOneBack(IReadOnlyList<SheetLayout> window, Action<SheetLayout> remember)
    {
        if (window.Count == 0 || window[random.Next(window.Count)] is not { HasHeld: false, IsClosed: false } sheet)
            return false;
        remember(sheet);
        layout.Clear(sheet);
        layout.Close(sheet, true);
        return true;
    }

    private void TakeSomeOut(IReadOnlyList<SheetLayout> window, Action<SheetLayout> remember)
    {
        var wanted = 1 + random.Next(_most);
        for (var (removed, tries) = (0, 0); removed < wanted && tries < 2 * _most && window.Count > 0; tries++)
        {
            var sheet = window[random.Next(window.Count)];
            if (sheet.Count == 0)
                continue;
            remember(sheet);
            var count = sheet.Count;
            layout.TakeOut(sheet, Pick(sheet, wanted - removed));
            removed += count - sheet.Count;
        }
    }

    /// <summary>A random leaf, or the tree around it while that is not more than asked.</summary>
    private int Pick(SheetLayout sheet, int most)
    {
        var cells = sheet.Cells;
        var at = random.Next(sheet.Top);
        while (cells[at].Item < 0)
            at = random.Next(sheet.Top);
        while (cells[at].Parent >= 0 && random.Next(2) == 0 && cells[cells[at].Parent].Items <= most + 2)
            at = cells[at].Parent;
        return at;
    }
}
