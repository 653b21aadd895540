using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Tests.Cutting;

/// <summary>What becomes of the figure between neighbours of a running grain.</summary>
public class RunJoints
{
    /// <summary>By hand: the saw takes 3 mm between two doors, and they hang 2 mm apart: 1 mm of the figure is missing.</summary>
    [Fact]
    public void The_figure_jumps_by_kerf_less_gap()
    {
        var joint = Assert.Single(Joints(Doors(2, 2)));
        Assert.Equal((Jobs.Mm(3), Jobs.Mm(2), Jobs.Mm(1)), (joint.Lost, joint.Gap, joint.Jump));
        Assert.Equal("the figure jumps 1 mm: the saw takes 3 mm, and the gap is 2 mm", joint.Say(Say));
    }

    [Fact]
    public void A_gap_wider_than_the_kerf_is_a_jump_the_other_way()
    {
        var joint = Assert.Single(Joints(Doors(2, 5)));
        Assert.Equal(Jobs.Mm(-2), joint.Jump);
        Assert.StartsWith("the figure jumps 2 mm", joint.Say(Say), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_gap_and_kerf_are_equal_the_figure_runs_on() =>
        Assert.StartsWith("the figure runs on", Joints(Doors(2, 3)).Single().Say(Say), StringComparison.Ordinal);

    [Fact]
    public void Where_nobody_says_the_gap_the_kerf_alone_is_told()
    {
        var joint = Assert.Single(Joints(Doors(2, null)));
        Assert.Null(joint.Jump);
        Assert.Equal("the saw takes 3 mm out of the figure", joint.Say(Say));
    }

    /// <summary>Six doors of 600 mm are more than a sheet is long: they come from two strips, and one joint of five is none.</summary>
    [Fact]
    public void Where_a_run_is_split_the_figure_starts_anew()
    {
        var doors = Doors(6, 2);
        var joints = Joints(doors with { Runs = [doors.Runs[0] with { MaySplitAfter = ["door-3"] }] });
        Assert.Equal(5, joints.Count);
        var split = Assert.Single(joints, j => j.IsSplit);
        Assert.Equal(("door-3", "door-4", null), (split.Before, split.After, split.Jump));
        Assert.Contains("starts anew", split.Say(Say), StringComparison.Ordinal);
    }

    /// <summary>Widths that no one order of visits serves part the strip in between, and a parting cut has a kerf of its own.</summary>
    [Fact]
    public void Where_a_strip_is_parted_the_saw_takes_two_kerfs()
    {
        var joints = Joints(Run([280, 300, 280, 300], 2));
        Assert.Contains(joints, j => j.Jump == Jobs.Mm(1));
        Assert.Contains(joints, j => j.Jump == Jobs.Mm(4));
    }

    [Fact]
    public void What_waits_has_no_joint_yet()
    {
        var doors = Doors(2, 2);
        Assert.Empty(Joints(doors with { Parts = [doors.Parts[0] with { Awaits = ["run.width"] }, doors.Parts[1]] }));
    }

    private static IReadOnlyList<RunJoint> Joints(CutRequest request) => RunJoint.Of(Jobs.PlanOf(request), request);

    private static string Say(Length length) => $"{length}";

    private static CutRequest Doors(int count, decimal? gap) => Run([.. Enumerable.Repeat(600m, count)], gap);

    private static CutRequest Run(IReadOnlyList<decimal> widths, decimal? gap)
    {
        var doors = widths.Select((width, i) => Jobs.Part($"door-{i + 1}", 700, width, PanelFigure.Width));
        var request = Jobs.Request([.. doors]);
        Length? apart = gap is { } given ? Jobs.Mm(given) : null;
        return request with
        {
            Runs =
            [
                new("fronts", [.. request.Parts.Select(p => p.Id)])
                {
                    Height = MatchedSide.Length,
                    Gaps = [.. widths.Skip(1).Select(_ => apart)],
                },
            ],
        };
    }
}
