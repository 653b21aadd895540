namespace Nookwright.Planning;

/// <summary>How cells hang together.</summary>
internal static class CellLinks
{
    /// <summary>Takes a child off its parent.</summary>
    public static void Unlink(Cell[] cells, int parent, int child)
    {
        cells[parent].Children--;
        cells[parent].IsFull = false;
        if (cells[parent].First == child)
        {
            cells[parent].First = cells[child].Next;
            return;
        }
        var before = cells[parent].First;
        while (cells[before].Next != child)
            before = cells[before].Next;
        cells[before].Next = cells[child].Next;
    }
}
