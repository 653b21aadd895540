using Nookwright.Measure;
using Nookwright.Records;
using Nookwright.Trouble;

namespace Nookwright.Projects;

/// <summary>Checks that what is named exists.</summary>
internal static class References
{
    /// <summary>Names of things that are not there, or are something else.</summary>
    public static IEnumerable<Refusal> Of(Project project) =>
        [.. OfFields(project), .. OfDoors(project), .. OfRows(project), .. OfPanels(project), .. OfWishes(project)];

    private static IEnumerable<Refusal> OfFields(Project project)
    {
        var ids = new Dictionary<string, HashSet<string>>();
        foreach (var leaf in Leaves.Of(project))
        {
            if (leaf is not { Form: Form.Text { RefersTo: { } list }, Value: string id })
                continue;
            if (!ids.TryGetValue(list, out var known))
                ids[list] = known = [.. project.IdsIn(list)];
            if (!known.Contains(id))
                yield return new(NotThere(id, list, known), leaf.Path);
        }
    }

    private static IEnumerable<Refusal> OfDoors(Project project) =>
        from doors in project.Pieces.OfType<Doors>()
        let box = project.Pieces.FirstOrDefault(piece => piece.Id == doors.Box)
        where box is not (null or Carcass)
        select new Refusal(
            $"\"{doors.Box}\" is not a box, and doors hang on a box: name one.",
            $"pieces/{doors.Id}/box"
        );

    private static IEnumerable<Refusal> OfRows(Project project) =>
        from row in project.Rows
        from piece in row.Pieces.Index()
        where row.Pieces.Take(piece.Index).Contains(piece.Item)
        select new Refusal(
            $"\"{piece.Item}\" stands in this row twice: take one away.",
            $"rows/{row.Id}/pieces/{piece.Index}"
        );

    private static IEnumerable<Refusal> OfPanels(Project project)
    {
        var pieces = project.IdsIn("pieces").ToHashSet();
        var groups = project
            .Runs.Select(run => (Path: $"runs/{run.Id}", run.Panels))
            .Concat(project.Matches.Select(match => (Path: $"matches/{match.Id}", match.Panels)))
            .Concat(project.Cutting.Pins.Select(pin => (Path: $"cutting/pins/{pin.Id}", pin.Panels)))
            .Concat(project.Cutting.Apart.Select(apart => (Path: $"cutting/apart/{apart.Id}", apart.Panels)));
        return from named in groups
            from panel in named.Panels.Index()
            let piece = panel.Item.Split('.')[0]
            where piece == panel.Item || !pieces.Contains(piece)
            select new Refusal(NoPanel(panel.Item, piece, pieces), $"{named.Path}/panels/{panel.Index}");
    }

    private static IEnumerable<Refusal> OfWishes(Project project) =>
        [.. PinnedTwice(project), .. StrangeSplits(project)];

    private static IEnumerable<Refusal> PinnedTwice(Project project)
    {
        var pinned = new Dictionary<string, string>();
        foreach (var pin in project.Cutting.Pins)
        foreach (var (index, panel) in pin.Panels.Index())
            if (!pinned.TryAdd(panel, pin.Id))
                yield return new(
                    $"\"{panel}\" is pinned by \"{pinned[panel]}\" already: take it out of one.",
                    $"cutting/pins/{pin.Id}/panels/{index}"
                );
    }

    private static IEnumerable<Refusal> StrangeSplits(Project project) =>
        from run in project.Runs
        from split in run.MaySplitAfter.Index()
        where !run.Panels.SkipLast(1).Contains(split.Item)
        select new Refusal(
            $"The run can split only after one of its own panels but the last, and \"{split.Item}\" is none: name one of "
                + $"{string.Join(", ", run.Panels.SkipLast(1))}.",
            $"runs/{run.Id}/maySplitAfter/{split.Index}"
        );

    private static string NoPanel(string panel, string piece, IReadOnlyCollection<string> pieces) =>
        pieces.Contains(piece)
            ? $"\"{panel}\" names a piece, and a panel of it is wanted: write \"{panel}.\" and the panel's name."
            : NotThere(piece, "pieces", pieces);

    private static string NotThere(string id, string list, IReadOnlyCollection<string> known)
    {
        var what = list switch
        {
            "shop/sheets" => "material",
            "shop/sheets/stock" => "stock size with the id",
            "shop/edgings" => "edging",
            _ => "piece",
        };
        var nearest = NearestName.To(id, known) is { } near ? $" Did you mean \"{near}\"?" : "";
        return $"There is no {what} \"{id}\": add it to {list}, or name one that is there.{nearest}";
    }
}
