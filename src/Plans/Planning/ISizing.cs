namespace Nookwright.Planning;

/// <summary>Draws up what follows from a change to a sheet's trees.</summary>
internal interface ISizing
{
    /// <summary>Draws up one sheet anew.</summary>
    void Refresh(SheetLayout sheet);

    /// <summary>Takes back all rules of a sheet, for one that goes.</summary>
    void DropRules(SheetLayout sheet);

    /// <summary>Brings the rules of a sheet in, for one that comes back.</summary>
    void BringRules(SheetLayout sheet);
}
