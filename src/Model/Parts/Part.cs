using Nookwright.Design;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Parts;

/// <summary>A panel as something to cut.</summary>
/// <param name="Id">The panel's id; stable over edits.</param>
/// <param name="Letter">Shared by parts that are truly equal: size, figure, edges, holes, hand, material.</param>
/// <param name="Panel">The panel it comes from.</param>
/// <param name="CutLength">What the saw sets along the panel's x: finished, less counted edging, plus what stays long.</param>
/// <param name="CutWidth">What the saw sets along the panel's y.</param>
/// <param name="Blank">The size it is broken down to while it is held, or null when it is final.</param>
/// <param name="Run">Its running grain and place in it, or null.</param>
public sealed record Part(
    string Id,
    string Letter,
    Panel Panel,
    Traced CutLength,
    Traced CutWidth,
    Blank? Blank,
    PlaceInRun? Run
)
{
    /// <summary>True while a reading it depends on has not been taken.</summary>
    public bool IsHeld => Blank is not null;

    /// <summary>What is cut out of a corner once the part has its size; null for most.</summary>
    public Notch? Notch => Notch.Of(Panel);
}

/// <summary>What a held part is cut to until its reading is taken.</summary>
/// <param name="Length">Planned size plus allowance, along the panel's x.</param>
/// <param name="Width">Planned size plus allowance, along the panel's y.</param>
/// <param name="Allowance">How long it is left.</param>
/// <param name="Awaits">Names of the readings it waits for.</param>
public sealed record Blank(Length Length, Length Width, Length Allowance, IReadOnlyList<string> Awaits);

/// <summary>A place in a running grain.</summary>
/// <param name="Run">The run's id.</param>
/// <param name="Order">From 1.</param>
public sealed record PlaceInRun(string Run, int Order);

/// <summary>One dimension of one part.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="Side">Length or width; never both.</param>
public readonly record struct PartSide(string Part, MatchedSide Side);

/// <summary>Dimensions that must come out the same, and so are cut in one visit.</summary>
/// <param name="Id">Given by the rule that made it, or by the maker.</param>
/// <param name="Sides">The dimensions.</param>
/// <param name="Size">What they are all cut to.</param>
/// <param name="Because">Why, as a sentence.</param>
/// <param name="ByHand">True when the maker added it.</param>
public sealed record MatchGroup(string Id, IReadOnlyList<PartSide> Sides, Length Size, string Because, bool ByHand);

/// <summary>A running grain: parts in order from one strip.</summary>
/// <param name="Id">The run's id.</param>
/// <param name="Parts">Part ids in order.</param>
/// <param name="Height">The side of the parts that lies across the strip.</param>
public sealed record RunOfParts(string Id, IReadOnlyList<string> Parts, MatchedSide Height)
{
    /// <summary>Parts after which the run may go on in another strip.</summary>
    public IReadOnlyList<string> MaySplitAfter { get; init; } = [];

    /// <summary>How far the cut edges of neighbours stand apart in the room, joint by joint; null where they do not stand side by side.</summary>
    public IReadOnlyList<Length?> Gaps { get; init; } = [];
}

/// <summary>Everything to make.</summary>
/// <param name="Parts">The parts, in the order of their pieces.</param>
/// <param name="Matches">What must match.</param>
/// <param name="Runs">Running grain.</param>
/// <param name="Findings">What will not work.</param>
public sealed record PartList(
    IReadOnlyList<Part> Parts,
    IReadOnlyList<MatchGroup> Matches,
    IReadOnlyList<RunOfParts> Runs,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>The parts by letter, in the order of the letters; equal parts once with their count.</summary>
    public IEnumerable<AlikeParts> ByLetter =>
        Parts.GroupBy(part => part.Letter).Select(alike => new AlikeParts(alike.Key, [.. alike]));

    /// <summary>The parts of what was designed: each panel becomes one.</summary>
    public static PartList Of(BuiltIn builtIn, Project project)
    {
        var panels = builtIn.Panels.ToList();
        var runs = new RunsOfParts(project, panels);
        var making = new PartMaking(project, runs);
        var parts = making.Make(panels);
        var matches = new MatchGrouping(project, parts);
        matches.AddAll();
        return new(parts, matches.Groups, runs.Runs, [.. runs.Findings, .. making.Findings, .. matches.Findings]);
    }
}
