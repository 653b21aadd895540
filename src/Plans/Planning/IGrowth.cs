namespace Nookwright.Planning;

/// <summary>Puts an item into the trees of a sheet and takes cells out again.</summary>
internal interface IGrowth
{
    /// <summary>Puts an item in a spot.</summary>
    void Put(SheetLayout sheet, Item item, in Spot spot);

    /// <summary>Takes a cell out with all below, and whatever cannot stay without it; the items are free again.</summary>
    void TakeOut(SheetLayout sheet, int cell, List<Item> free);
}
