namespace Nookwright.Cutting;

/// <summary>What becomes of the wood of a plan.</summary>
public static class PlanAreas
{
    /// <summary>The fraction, 0 to 1, of all sheets taken that is neither part, nor held, nor an offcut worth keeping: waste, slivers and kerf.</summary>
    public static double Waste(Plan plan)
    {
        var taken = plan.Sheets.Sum(s => s.Length.Millimetres * s.Width.Millimetres);
        // A blank or an offcut that a later round cuts is not counted beside what comes of it.
        var cut = plan.Cuts.Select(c => c.On).ToHashSet();
        return taken <= 0 ? 0 : 1 - (plan.Workpieces.Where(p => IsOfUse(p) && !cut.Contains(p.Id)).Sum(Area) / taken);
    }

    private static bool IsOfUse(Workpiece piece) =>
        piece.Use is WorkpieceUse.Part or WorkpieceUse.Held or WorkpieceUse.Offcut;

    private static double Area(Workpiece piece) => piece.Length.Millimetres * piece.Width.Millimetres;
}
