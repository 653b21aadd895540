using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Parts;

/// <summary>Turns what should match into match groups: dimensions of equal size that can be cut in one visit.</summary>
/// <remarks>
/// A rule groups only what the design made equal: boxes of different depth are no mistake. What the maker matched by hand
/// must be equal, or a finding says by how much it is not. Parts that wait for different readings are not cut in one visit.
/// </remarks>
internal sealed class MatchGrouping(Project project, IReadOnlyList<Part> parts)
{
    private readonly Dictionary<string, Part> _parts = parts.DistinctBy(part => part.Id).ToDictionary(part => part.Id);
    private readonly HashSet<string> _ids = [];

    public List<MatchGroup> Groups { get; } = [];

    public List<Finding> Findings { get; } = [];

    public void AddAll()
    {
        var partsOfPiece = parts.ToLookup(part => part.Panel.Piece);
        foreach (var piece in project.Pieces.DistinctBy(piece => piece.Id))
        foreach (var match in PieceMatches.Of(piece, [.. partsOfPiece[piece.Id]]))
            AddEqual(match);
        foreach (var match in new RowMatches(project, partsOfPiece).All())
            AddEqual(match);
        foreach (var match in project.Matches)
            AddByHand(match);
    }

    private void AddEqual(MustMatch match)
    {
        foreach (var equal in match.Sides.GroupBy(side => (Size(side), Waits(side))))
            if (match.WithinOnePiece || equal.Select(side => _parts[side.Part].Panel.Piece).Distinct().Count() > 1)
                Add(match.Id, [.. equal], match.Because, byHand: false);
    }

    private void AddByHand(HandMatch match)
    {
        var unknown = match.Panels.Where(id => !_parts.ContainsKey(id)).Distinct().ToList();
        foreach (var id in unknown)
            Find(match, "match.unknown-panel", $"names {id}, and there is no such panel{Near(id)}.", [id]);
        var members = match.Panels.Except(unknown).Distinct().ToList();
        if (members.Count < 2)
            Find(match, "match.too-few", $"has {members.Count} of the two parts it needs at least.", members);
        foreach (var side in SidesOf(match.Side))
            AddByHand(match, side, [.. members.Select(id => new PartSide(id, side))]);
    }

    private void AddByHand(HandMatch match, MatchedSide side, List<PartSide> sides)
    {
        var id = match.Side == MatchedSide.Both ? $"{match.Id}.{Word(side)}" : match.Id;
        var because = match.Because ?? "The maker wants these to match.";
        if (sides.Select(Size).Distinct().Count() > 1)
            Find(
                match,
                "match.sizes-differ",
                $"wants one {Word(side)}, and they differ: {Amounts(sides)}.",
                Ids(sides)
            );
        else
            AddByWaits(match, id, because, [.. sides.GroupBy(Waits).Select(g => g.ToList())]);
    }

    private void AddByWaits(HandMatch match, string id, string because, List<List<PartSide>> rounds)
    {
        if (rounds.Count > 1)
            Find(
                match,
                "match.waits-differ",
                $"cannot be cut in one visit: {Held(rounds)} wait for a reading and the others do not, or for another one.",
                Ids([.. rounds.SelectMany(r => r)])
            );
        foreach (var round in rounds)
            Add(id, round, because, byHand: true);
    }

    private void Add(string id, List<PartSide> sides, string because, bool byHand)
    {
        if (sides.Count > 1)
            Groups.Add(new(Unique(id), sides, Size(sides[0]), because, byHand));
    }

    /// <summary>Where one rule finds several sizes, its second group is called <c>ID-2</c>.</summary>
    private string Unique(string id) =>
        Enumerable.Range(1, int.MaxValue).Select(n => n == 1 ? id : $"{id}-{n}").First(_ids.Add);

    private Length Size(PartSide side) => CutSizes.Of(_parts[side.Part], side.Side).Length;

    private string Waits(PartSide side) => string.Join(' ', _parts[side.Part].Blank?.Awaits ?? []);

    private string Held(List<List<PartSide>> rounds) =>
        string.Join(", ", rounds.SelectMany(r => r).Where(side => _parts[side.Part].IsHeld).Select(side => side.Part));

    private string Amounts(List<PartSide> sides) =>
        string.Join(", ", sides.Select(side => $"{side.Part} {LengthText.Write(Size(side), project.Units)}"));

    private string Near(string id) => NearestName.To(id, _parts.Keys) is { } near ? $"; is {near} meant?" : "";

    private static IReadOnlyList<MatchedSide> SidesOf(MatchedSide side) =>
        side == MatchedSide.Both ? [MatchedSide.Length, MatchedSide.Width] : [side];

    private static string Word(MatchedSide side) => side.ToString().ToLowerInvariant();

    private static List<string> Ids(List<PartSide> sides) => [.. sides.Select(side => side.Part)];

    private void Find(HandMatch match, string rule, string what, IReadOnlyList<string> about) =>
        Findings.Add(
            new(rule, Severity.Warning, $"Match group {match.Id} {what}", [match.Id, .. about])
            {
                Field = $"matches/{match.Id}/panels",
            }
        );
}
