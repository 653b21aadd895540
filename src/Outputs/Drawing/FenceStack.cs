using Nookwright.Cutting;

namespace Nookwright.Drawing;

/// <summary>Workpieces that go past the blade in one visit, cut after cut, each leaving what the next is cut from.</summary>
/// <param name="First">The workpiece before its first sizing cut.</param>
/// <param name="Along">The axis the setting is measured along.</param>
/// <param name="From">The edge that lies against the fence.</param>
/// <param name="Gives">What each cut gives, in order: one piece of each workpiece cut alike.</param>
/// <param name="Left">What is left after the last, or null when nothing is.</param>
/// <param name="Like">Ids of the workpieces that are cut just like it, itself the first.</param>
internal sealed record FenceStack(
    Workpiece First,
    SheetAxis Along,
    FromEdge From,
    IReadOnlyList<IReadOnlyList<Workpiece>> Gives,
    Workpiece? Left,
    IReadOnlyList<string> Like
)
{
    /// <summary>The first workpiece's size along the setting's axis, in millimetres.</summary>
    public double Across => (Along == SheetAxis.Length ? First.Length : First.Width).Millimetres;

    /// <summary>The stacks of a visit, in the order of their first cuts; those cut alike are one.</summary>
    public static IReadOnlyList<FenceStack> Of(Visit visit, Plan plan)
    {
        var pieces = plan.Workpieces.ToDictionary(w => w.Id);
        var stacks = new List<List<SawCut>>();
        foreach (var cut in visit.Cuts.Where(c => c.Kind == CutKind.Sizing))
            if (stacks.Find(s => (s[^1].Leaves, s[^1].Along, s[^1].From) == (cut.On, cut.Along, cut.From)) is { } stack)
                stack.Add(cut);
            else
                stacks.Add([cut]);
        return
        [
            .. stacks
                .Select(cuts => Of(cuts, pieces))
                .GroupBy(s => (s.First.Length, s.First.Width, s.Along, s.From, s.Gives.Count))
                .Select(g => Together([.. g])),
        ];
    }

    private static FenceStack Together(IReadOnlyList<FenceStack> alike) =>
        alike[0] with
        {
            Like = [.. alike.Select(s => s.First.Id)],
            Gives = [.. alike[0].Gives.Select((_, place) => alike.Select(s => s.Gives[place][0]).ToArray())],
        };

    private static FenceStack Of(IReadOnlyList<SawCut> cuts, Dictionary<string, Workpiece> pieces) =>
        new(
            pieces[cuts[0].On],
            cuts[0].Along,
            cuts[0].From,
            [.. cuts.Select(c => c.Gives).OfType<string>().Select(id => new[] { pieces[id] })],
            cuts[^1].Leaves is { } left ? pieces[left] : null,
            [cuts[0].On]
        );
}
