namespace Nookwright.Planning;

/// <summary>Keeps parts in different strips that the maker wants apart.</summary>
internal sealed class ApartStrips(Job job)
{
    /// <summary>True when a new item in a cell would share a strip with one it must be apart from.</summary>
    /// <remarks>Whatever a sizing cut takes off is a strip, so the outermost strip around the cell holds all the others.</remarks>
    public bool HasNear(SheetLayout sheet, int cell, Item item)
    {
        var strip = -1;
        for (var at = cell; at >= 0; at = sheet.Cells[at].Parent)
            if (sheet.Cells[at].Setting >= 0)
                strip = at;
        return strip >= 0 && Holds(sheet, strip, item);
    }

    private bool Holds(SheetLayout sheet, int at, Item item)
    {
        ref var cell = ref sheet.Cells[at];
        if (cell.Item >= 0)
            return job.Items[cell.Item].Apart.Any(item.Apart.Contains);
        for (var child = cell.First; child >= 0; child = sheet.Cells[child].Next)
            if (Holds(sheet, child, item))
                return true;
        return cell.Rest >= 0 && Holds(sheet, cell.Rest, item);
    }
}
