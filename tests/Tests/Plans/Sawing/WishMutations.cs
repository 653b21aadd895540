using Nookwright.Cutting;
using Nookwright.Shop;
using Nookwright.Tests.Rounds;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Sawing;

/// <summary>Every way in which a plan that can be cut goes against what is true of its sheets or what the maker wishes of them.</summary>
internal static class WishMutations
{
    /// <summary>A knot of a millimetre in a corner of a part, each corner in turn.</summary>
    public static IEnumerable<Mutation> BadUnderParts(Plan plan, CutRequest request) =>
        BadUnder(plan, request, WorkpieceUse.Part);

    public static IEnumerable<Mutation> BadUnderBlanks(Plan plan, CutRequest request) =>
        BadUnder(plan, request, WorkpieceUse.Held);

    /// <summary>Every sheet of its stock is as it was, and one more is the only one it may come from.</summary>
    public static IEnumerable<Mutation> PinnedElsewhere(Plan plan, CutRequest request) =>
        from part in request.Parts
        where plan.Workpieces.Any(w => w.Part == part.Id)
        let parts = request.Parts.Select(p => p == part ? p with { From = "flame" } : p)
        let flame = request.Stock.First(s => s.Material == part.Material) with
        {
            Id = "flame",
        }
        select new Mutation(
            plan,
            request with
            {
                Parts = [.. parts],
                Stock = [.. request.Stock, flame],
            },
            null,
            $"{part.Id} is to come from flame"
        );

    public static IEnumerable<Mutation> MovedOnPinnedSheets(Plan plan, CutRequest request) =>
        from number in plan.Sheets.Select(s => s.Number)
        let pin = PinnedSheet.Of("keep", plan, number, request)
        from piece in pin.Plan.Workpieces
        where piece.Use is WorkpieceUse.Part or WorkpieceUse.Held
        let moved = pin.Plan.Workpieces.Select(w => w == piece ? w with { X = w.X + Mm(0.5m) } : w)
        select Pinned(plan, request, pin with { Plan = pin.Plan with { Workpieces = [.. moved] } });

    public static IEnumerable<Mutation> TakenFromPinnedSheets(Plan plan, CutRequest request) =>
        from sheet in plan.Sheets
        let pin = PinnedSheet.Of("keep", plan, sheet.Number, request)
        from other in plan.Workpieces
        where other.Use == WorkpieceUse.Part && other.Sheet != sheet.Number
        select Pinned(
            plan,
            request,
            pin with
            {
                Plan = pin.Plan with { Workpieces = [.. pin.Plan.Workpieces, other with { Sheet = 1 }] },
            }
        );

    /// <summary>The pin knows of one part less than the sheet gives.</summary>
    public static IEnumerable<Mutation> AddedToPinnedSheets(Plan plan, CutRequest request) =>
        from number in plan.Sheets.Select(s => s.Number)
        let pin = PinnedSheet.Of("keep", plan, number, request)
        from piece in pin.Plan.Workpieces
        where piece.Use is WorkpieceUse.Part or WorkpieceUse.Held
        let fewer = pin.Plan.Workpieces.Select(w => w == piece ? w with { Use = WorkpieceUse.Offcut, Part = null } : w)
        select Pinned(plan, request, pin with { Plan = pin.Plan with { Workpieces = [.. fewer] } });

    public static IEnumerable<Mutation> PinnedSheetsOfAnotherStock(Plan plan, CutRequest request) =>
        from number in plan.Sheets.Select(s => s.Number)
        let pin = PinnedSheet.Of("keep", plan, number, request)
        where pin.Parts.Count > 0
        let flame = pin.Sheet with
        {
            Stock = "flame",
        }
        select Pinned(plan, request, pin with { Plan = pin.Plan with { Sheets = [flame] } });

    /// <summary>Neighbours that one sizing cut after the other takes off one strip.</summary>
    public static IEnumerable<Mutation> ApartInOneStrip(Plan plan, CutRequest request)
    {
        var parts = plan.Workpieces.Where(w => w.Use == WorkpieceUse.Part).ToList();
        return from strip in plan.Workpieces
            where strip.Use == WorkpieceUse.Strip && IsSized(strip, plan)
            let inside = parts.Where(p => Issued.IsWithin(p, strip)).Select(p => p.Part!).ToList()
            from other in inside.Skip(1)
            let apart = new CutApart("unlike", [inside[0], other])
            select new Mutation(plan, request with { Apart = [apart] }, null, "come from one strip");
    }

    private static Mutation Pinned(Plan plan, CutRequest request, PinnedSheet pin) =>
        new(plan, request with { PinnedSheets = [pin] }, null, "is cut as it was when it was pinned");

    private static IEnumerable<Mutation> BadUnder(Plan plan, CutRequest request, WorkpieceUse use) =>
        from piece in plan.Workpieces
        where piece.Use == use
        let stock = plan.Sheets.Single(s => s.Number == piece.Sheet).Stock
        from x in new[] { piece.X, piece.X + piece.Length - Mm(1) }
        from y in new[] { piece.Y, piece.Y + piece.Width - Mm(1) }
        let bad = new BadArea(x, y, Mm(1), Mm(1), "knot")
        let spoiled = request.Stock.Select(s => s.Id == stock ? s with { Bad = [bad] } : s)
        select new Mutation(plan, request with { Stock = [.. spoiled] }, null, "lies on the bad area");

    private static bool IsSized(Workpiece strip, Plan plan) =>
        plan.Cuts.Any(c => c.Gives == strip.Id && c.Kind == CutKind.Sizing);
}
