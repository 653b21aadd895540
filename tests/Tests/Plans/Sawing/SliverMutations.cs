using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Tests.Fixtures;

namespace Nookwright.Tests.Sawing;

/// <summary>What a dressing pass takes off is waste; plans that make something of it all the same.</summary>
internal static class SliverMutations
{
    private const string Says = "a dressing pass takes off";

    public static IEnumerable<Mutation> Kept(Plan plan, CutRequest request) =>
        from pass in Passes(plan)
        from use in new[] { WorkpieceUse.Offcut, WorkpieceUse.Held, WorkpieceUse.Part }
        let part = use == WorkpieceUse.Offcut ? null : request.Parts[0].Id
        let pieces = plan.Workpieces.Select(p => p.Id == pass.Gives ? p with { Use = use, Part = part } : p)
        select new Mutation(plan with { Workpieces = [.. pieces] }, request, pass.Number, Says);

    /// <summary>The sliver is crosscut at a pencil line in the middle, and both halves are listed as they lie.</summary>
    public static IEnumerable<Mutation> CutAgain(Plan plan, CutRequest request) =>
        from pass in Passes(plan)
        let sliver = plan.Workpieces.Single(p => p.Id == pass.Gives)
        let along = pass.Along == SheetAxis.Length ? SheetAxis.Width : SheetAxis.Length
        let half = new Length(Size(sliver, along).Nanometres / 2)
        let beyond = half + request.Saws.TrackKerf
        let again = new SawCut(0, CutKind.Breakdown, sliver.Id, along, FromEdge.Low, half, "half-1", "half-2")
        let more = Mutation.EachCut(plan, c => c == pass ? [c, again] : [c]) with
        {
            Workpieces =
            [
                .. plan.Workpieces,
                HandSaw.Sized(sliver, along, Length.Zero, half) with
                {
                    Id = "half-1",
                },
                HandSaw.Sized(sliver, along, beyond, Size(sliver, along) - beyond) with
                {
                    Id = "half-2",
                },
            ],
        }
        select new Mutation(Mutation.Renumbered(more), request, pass.Number + 1, Says);

    private static IEnumerable<SawCut> Passes(Plan plan) =>
        plan.Breakdown.Where(c => c is { Kind: CutKind.Dressing, Gives: not null });

    private static Length Size(Workpiece piece, SheetAxis axis) =>
        axis == SheetAxis.Length ? piece.Length : piece.Width;
}
