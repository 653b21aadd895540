using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Sawing;

/// <summary>Every way to spoil a plan in one place that leaves no plan that can be cut, by name.</summary>
internal static class Mutations
{
    private static readonly Length Mark = Mm(0.5m);

    public static IReadOnlyDictionary<string, Func<Plan, CutRequest, IEnumerable<Mutation>>> All { get; } =
        new Dictionary<string, Func<Plan, CutRequest, IEnumerable<Mutation>>>
        {
            ["a cut half a millimetre farther out"] = (plan, request) => CutsMoved(plan, request, Mark),
            ["a cut half a millimetre nearer"] = (plan, request) => CutsMoved(plan, request, -Mark),
            ["a setting half a millimetre off"] = SettingsChanged,
            ["a cut left out"] = CutsDropped,
            ["a cut made twice"] = CutsDoubled,
            ["a dressing pass left out"] = DressingLeftOut,
            ["what a dressing pass takes off kept as wood"] = SliverMutations.Kept,
            ["what a dressing pass takes off cut again"] = SliverMutations.CutAgain,
            ["two visits in the wrong order"] = VisitsSwapped,
            ["two parts that changed places"] = PartsSwapped,
            ["a piece said to lie elsewhere"] = PiecesMoved,
            ["a piece said to be larger"] = PiecesGrown,
            ["a piece that no cut gives"] = PiecesInvented,
            ["a part left out with no more than a warning"] = PartsLeftOut,
            ["a sheet that is smaller"] = SheetsShrunk,
            ["a sheet of another material"] = SheetsOfAnotherMaterial,
            ["a part with its figure the other way"] = FiguresTurned,
            ["a match split over two visits"] = MatchesSplit,
            ["a run out of order"] = RunsOutOfOrder,
            ["a held part brought to its final size"] = HeldMadeFinal,
            ["a held part cut at a visit"] = HeldCutAtVisit,
            ["a piece beyond what one person handles"] = ChunksTooLarge,
            ["a rip beyond the fence"] = FenceTooShort,
            ["a crosscut beyond the stop"] = StopTooShort,
            ["a cut longer than the track"] = TrackTooShort,
            ["a bad area under a part"] = WishMutations.BadUnderParts,
            ["a bad area under a blank"] = WishMutations.BadUnderBlanks,
            ["a part pinned to another sheet"] = WishMutations.PinnedElsewhere,
            ["a part of a pinned sheet elsewhere on it"] = WishMutations.MovedOnPinnedSheets,
            ["a part of a pinned sheet on another"] = WishMutations.TakenFromPinnedSheets,
            ["one more part from a pinned sheet"] = WishMutations.AddedToPinnedSheets,
            ["a pinned sheet of another stock"] = WishMutations.PinnedSheetsOfAnotherStock,
            ["two parts of one strip to be apart"] = WishMutations.ApartInOneStrip,
        };

    private static IEnumerable<Mutation> CutsMoved(Plan plan, CutRequest request, Length shift) =>
        from cut in plan.Cuts
        where cut.Distance + shift >= Length.Zero
        let moved = Mutation.EachCut(plan, c => [c == cut ? c with { Distance = c.Distance + shift } : c])
        select new Mutation(moved, request, cut.Number, "");

    private static IEnumerable<Mutation> SettingsChanged(Plan plan, CutRequest request) =>
        from visit in plan.Visits
        let changed = plan.Visits.Select(v => v == visit ? v with { Setting = v.Setting - Mark } : v)
        let first = visit.Cuts.First(c => c.Kind == CutKind.Sizing)
        select new Mutation(plan with { Visits = [.. changed] }, request, first.Number, "stands at");

    private static IEnumerable<Mutation> CutsDropped(Plan plan, CutRequest request) =>
        from cut in plan.Cuts
        let fewer = Mutation.Renumbered(Mutation.EachCut(plan, c => c == cut ? [] : [c]))
        select new Mutation(fewer, request, null, "");

    private static IEnumerable<Mutation> CutsDoubled(Plan plan, CutRequest request) =>
        from cut in plan.Cuts
        let more = Mutation.Renumbered(Mutation.EachCut(plan, c => c == cut ? [c, c] : [c]))
        select new Mutation(more, request, cut.Number + 1, "has been cut up already");

    /// <summary>The sliver stays on, and what should have been dressed goes on under its own name.</summary>
    private static IEnumerable<Mutation> DressingLeftOut(Plan plan, CutRequest request) =>
        from pass in plan.Breakdown
        where pass.Kind == CutKind.Dressing
        let rough = Mutation.EachCut(
            plan,
            c =>
                c == pass ? []
                : c.On == pass.Leaves ? [c with { On = pass.On }]
                : [c]
        )
        select new Mutation(Mutation.Renumbered(rough), request, null, "");

    private static IEnumerable<Mutation> VisitsSwapped(Plan plan, CutRequest request) =>
        from i in Enumerable.Range(0, plan.Visits.Count)
        from j in Enumerable.Range(i + 1, plan.Visits.Count - i - 1)
        let first = plan.Visits[i]
        let then = plan.Visits[j]
        where then.Cuts.Any(c => first.Cuts.Any(f => f.Gives == c.On || f.Leaves == c.On))
        let swapped = plan.Visits.Select(v =>
            v == first ? then
            : v == then ? first
            : v
        )
        select new Mutation(Mutation.Renumbered(plan with { Visits = [.. swapped] }), request, null, "is not there");

    private static IEnumerable<Mutation> PartsSwapped(Plan plan, CutRequest request)
    {
        var asked = request.Parts.ToDictionary(p => p.Id);
        var made = plan.Workpieces.Where(p => p.Use == WorkpieceUse.Part).ToList();
        return from one in made
            from other in made
            where string.CompareOrdinal(one.Id, other.Id) < 0
            where !IsAlike(asked[one.Part!], asked[other.Part!])
            let pieces = plan.Workpieces.Select(p =>
                p == one ? p with { Part = other.Part }
                : p == other ? p with { Part = one.Part }
                : p
            )
            select new Mutation(plan with { Workpieces = [.. pieces] }, request, null, "");
    }

    private static bool IsAlike(CutPart one, CutPart other) =>
        one.Material == other.Material
        && Length.Max(one.Length, one.Width) == Length.Max(other.Length, other.Width)
        && Length.Min(one.Length, one.Width) == Length.Min(other.Length, other.Width);

    private static IEnumerable<Mutation> PiecesMoved(Plan plan, CutRequest request) =>
        EachPiece(plan, request, p => p with { X = p.X + Mark })
            .Concat(EachPiece(plan, request, p => p with { Y = p.Y + Mark }));

    private static IEnumerable<Mutation> PiecesGrown(Plan plan, CutRequest request) =>
        EachPiece(plan, request, p => p with { Length = p.Length + Mark })
            .Concat(EachPiece(plan, request, p => p with { Width = p.Width + Mark }));

    private static IEnumerable<Mutation> EachPiece(Plan plan, CutRequest request, Func<Workpiece, Workpiece> change) =>
        from piece in plan.Workpieces
        let giver = plan.Cuts.FirstOrDefault(c => c.Gives == piece.Id || c.Leaves == piece.Id)
        let pieces = plan.Workpieces.Select(p => p == piece ? change(p) : p)
        select new Mutation(plan with { Workpieces = [.. pieces] }, request, giver?.Number, piece.Id);

    private static IEnumerable<Mutation> PiecesInvented(Plan plan, CutRequest request) =>
        from piece in plan.Workpieces
        let another = piece with
        {
            Id = "another",
            Use = WorkpieceUse.Offcut,
            Part = null,
        }
        select new Mutation(plan with { Workpieces = [.. plan.Workpieces, another] }, request, null, "another");

    private static IEnumerable<Mutation> PartsLeftOut(Plan plan, CutRequest request) =>
        from part in plan.Workpieces
        where part.Use == WorkpieceUse.Part
        let pieces = plan.Workpieces.Select(p => p == part ? p with { Use = WorkpieceUse.Waste, Part = null } : p)
        let warning = new Finding("cutting.match-partly-held", Severity.Warning, "It waits.", [part.Part!])
        let less = plan with
        {
            Workpieces = [.. pieces],
            Findings = [.. plan.Findings, warning],
        }
        select new Mutation(less, request, null, $"{part.Part} is not made");

    private static IEnumerable<Mutation> SheetsShrunk(Plan plan, CutRequest request) =>
        from used in plan.Sheets.Select(s => s.Stock).Distinct()
        let stock = request.Stock.Select(s => s.Id == used ? s with { Width = s.Width - Mark } : s)
        select new Mutation(plan, request with { Stock = [.. stock] }, null, used);

    private static IEnumerable<Mutation> SheetsOfAnotherMaterial(Plan plan, CutRequest request) =>
        from sheet in plan.Sheets
        let sheets = plan.Sheets.Select(s => s == sheet ? s with { Material = "oak" } : s)
        select new Mutation(plan with { Sheets = [.. sheets] }, request, null, $"Sheet {sheet.Number}");

    private static IEnumerable<Mutation> FiguresTurned(Plan plan, CutRequest request) =>
        from part in request.Parts
        where !part.IsHeld && part.Figure != PanelFigure.Any && part.Length != part.Width
        where plan.Workpieces.Any(p => p.Use == WorkpieceUse.Part && p.Part == part.Id)
        let other = part.Figure == PanelFigure.Length ? PanelFigure.Width : PanelFigure.Length
        let parts = request.Parts.Select(p => p == part ? p with { Figure = other } : p)
        select new Mutation(plan, request with { Parts = [.. parts] }, null, part.Id);

    /// <summary>Between two cuts that each give a part of the match its matching length, the saw is set twice.</summary>
    private static IEnumerable<Mutation> MatchesSplit(Plan plan, CutRequest request)
    {
        var made = plan.Workpieces.Where(p => p.Use == WorkpieceUse.Part).ToDictionary(p => p.Id, p => p.Part);
        var asked = request.Parts.ToDictionary(p => p.Id);
        bool Sizes(SawCut cut, CutMatch match) =>
            cut is { Kind: CutKind.Sizing, Gives: { } gives }
            && made.TryGetValue(gives, out var part)
            && match.Sides.Any(s => s.Part == part)
            && asked[part!].Length == cut.Distance
            && asked[part!].Width != cut.Distance;
        return from match in request.Matches
            from visit in plan.Visits
            let cuts = visit.Cuts.Select((cut, i) => (cut, i)).Where(c => Sizes(c.cut, match)).ToList()
            from pair in cuts.Skip(1)
            let halves = (Visit[])
                [visit with { Cuts = [.. visit.Cuts.Take(pair.i)] }, visit with { Cuts = [.. visit.Cuts.Skip(pair.i)] }]
            let visits = plan.Visits.SelectMany(v => v == visit ? halves : [v])
            select new Mutation(Mutation.Renumbered(plan with { Visits = [.. visits] }), request, null, match.Id);
    }

    /// <summary>A run may be read from either end, so that two of two cannot be out of order.</summary>
    private static IEnumerable<Mutation> RunsOutOfOrder(Plan plan, CutRequest request) =>
        from run in request.Runs
        where run.Parts.Count > 2
        where run.Parts.All(d => plan.Workpieces.Any(p => p.Use == WorkpieceUse.Part && p.Part == d))
        from i in Enumerable.Range(0, run.Parts.Count - 1)
        let order = (string[])[.. run.Parts.Take(i), run.Parts[i + 1], run.Parts[i], .. run.Parts.Skip(i + 2)]
        select new Mutation(plan, request with { Runs = [run with { Parts = order }] }, null, run.Id);

    private static IEnumerable<Mutation> HeldMadeFinal(Plan plan, CutRequest request) =>
        from part in request.Parts
        where !request.Runs.Any(r => r.Parts.Contains(part.Id))
        where plan.Workpieces.Any(p => p.Use == WorkpieceUse.Part && p.Part == part.Id)
        let parts = request.Parts.Select(p => p == part ? p with { Awaits = ["a.reading"] } : p)
        select new Mutation(plan, request with { Parts = [.. parts] }, null, $"{part.Id} waits for a.reading");

    /// <summary>A finished part is called the blank of another that waits: right in size, and cut with the fence all the same.</summary>
    private static IEnumerable<Mutation> HeldCutAtVisit(Plan plan, CutRequest request) =>
        from held in HeldMadeFinal(plan, request)
        let waits = held.Request.Parts.Single(p => p.IsHeld && !request.Parts.Contains(p))
        let pieces = plan.Workpieces.Select(p =>
            p.Part == waits.Id && p.Use == WorkpieceUse.Part ? p with { Use = WorkpieceUse.Held } : p
        )
        select held with
        {
            Plan = plan with { Workpieces = [.. pieces] },
            Says = "has been cut at a visit",
        };

    private static IEnumerable<Mutation> ChunksTooLarge(Plan plan, CutRequest request)
    {
        var pieces = plan.Workpieces.ToDictionary(p => p.Id);
        var cut = plan.Visits.SelectMany(v => v.Cuts).Select(c => pieces[c.On]).ToList();
        if (cut.Count == 0)
            yield break;
        var longest = cut.Max(p => Length.Max(p.Length, p.Width)) - Mark;
        var widest = cut.Max(p => Length.Min(p.Length, p.Width)) - Mark;
        yield return new(plan, Shop(request, s => s with { ChunkLength = longest }), null, "more than one person");
        yield return new(plan, Shop(request, s => s with { ChunkWidth = widest }), null, "more than one person");
    }

    private static IEnumerable<Mutation> FenceTooShort(Plan plan, CutRequest request) =>
        from visit in plan.Visits
        where visit.Saw == Saw.Fence
        let saws = Shop(request, s => s with { RipReach = visit.Setting - Mark })
        select new Mutation(plan, saws, null, "it reaches");

    private static IEnumerable<Mutation> StopTooShort(Plan plan, CutRequest request) =>
        from visit in plan.Visits
        where visit.Saw == Saw.Stop
        let saws = Shop(request, s => s with { CrosscutReach = visit.Setting - Mark })
        select new Mutation(plan, saws, null, "it reaches");

    private static IEnumerable<Mutation> TrackTooShort(Plan plan, CutRequest request)
    {
        var pieces = plan.Workpieces.ToDictionary(p => p.Id);
        return from cut in plan.Breakdown
            let piece = pieces[cut.On]
            let across = cut.Along == SheetAxis.Length ? piece.Width : piece.Length
            let saws = Shop(request, s => s with { TrackLength = across - Mark })
            select new Mutation(plan, saws, null, "and the track");
    }

    private static CutRequest Shop(
        CutRequest request,
        Func<Nookwright.Shop.SawLimits, Nookwright.Shop.SawLimits> change
    ) => request with { Saws = change(request.Saws) };
}
