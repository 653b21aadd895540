using Nookwright.Design;
using Nookwright.Files;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Projects;
using Nookwright.Survey;
using Nookwright.Tests.House;
using Nookwright.Trouble;

namespace Nookwright.Tests.Parts;

/// <summary>Both demo jobs, from their readings to their parts.</summary>
public class DemoPartsTests
{
    [Theory, MemberData(nameof(Demos))]
    public void Each_panel_of_a_demo_is_one_part_and_nothing_must_be_mended(string demo)
    {
        var (room, builtIn, parts) = Worked(Open(demo));
        Assert.Equal(builtIn.Panels.Select(panel => panel.Id).Order(), parts.Parts.Select(part => part.Id).Order());
        Assert.DoesNotContain(room.Findings.Concat(parts.Findings), finding => finding.Severity == Severity.MustMend);
    }

    [Theory, MemberData(nameof(Demos))]
    public void A_demos_held_parts_wait_for_its_readings_and_for_nothing_once_they_are_taken(string demo)
    {
        var job = Open(demo);
        var (_, builtIn, before) = Worked(job);
        var readings = job.Readings.Select(reading => reading.Name).ToHashSet();
        Assert.Contains(before.Parts, part => part.IsHeld);
        Assert.All(
            before.Parts.Where(part => part.IsHeld),
            part => Assert.Subset(readings, part.Blank!.Awaits.ToHashSet())
        );

        var taken = job.Readings.Select(reading => reading with { Taken = Planned(builtIn, reading.Name, job.Units) });
        var (_, _, after) = Worked(job with { Readings = [.. taken] });
        Assert.DoesNotContain(after.Parts, part => part.IsHeld);
        Assert.Equal(before.Parts.Select(part => part.Id), after.Parts.Select(part => part.Id));
    }

    [Theory, MemberData(nameof(Demos))]
    public void A_demos_matching_parts_are_cut_to_one_size_at_one_time(string demo)
    {
        var (_, _, list) = Worked(Open(demo));
        var parts = list.Parts.ToDictionary(part => part.Id);
        Assert.NotEmpty(list.Matches);
        foreach (var group in list.Matches)
        {
            var sizes = group.Sides.Select(side => SizeOf(parts[side.Part], side.Side)).Distinct();
            Assert.Equal([group.Size], sizes);
            Assert.Single(
                group.Sides.Select(side => string.Join(' ', parts[side.Part].Blank?.Awaits ?? [])).Distinct()
            );
        }
    }

    [Theory, MemberData(nameof(Demos))]
    public void A_demos_running_doors_are_one_height_and_each_has_its_own_letter(string demo)
    {
        var (_, _, list) = Worked(Open(demo));
        var run = Assert.Single(list.Runs);
        var doors = run.Parts.Select(id => list.Parts.Single(part => part.Id == id)).ToList();
        Assert.True(doors.Count >= 5);
        Assert.Equal(doors.Count, doors.Select(door => door.Letter).Distinct().Count());
        Assert.Single(doors.Select(door => SizeOf(door, HeightOf(door))).Distinct());
    }

    public static TheoryData<string> Demos() =>
        [.. Directory.GetFiles(Checkout.File("demo"), "*.nook.json").Select(path => Path.GetFileName(path)).Order()];

    private static Project Open(string demo) => JobFile.Read(Checkout.File("demo", demo)).Value;

    private static (Room Room, BuiltIn BuiltIn, PartList Parts) Worked(Project job)
    {
        var room = Room.Of(job);
        var builtIn = BuiltIn.Of(job, room);
        return (room, builtIn, PartList.Of(builtIn, job));
    }

    private static SizeText Planned(BuiltIn builtIn, string name, LengthUnit unit) =>
        LengthText.Write(builtIn.Sizes[name].Length, unit);

    private static Length SizeOf(Part part, MatchedSide side) =>
        side == MatchedSide.Length ? part.CutLength.Length : part.CutWidth.Length;

    private static MatchedSide HeightOf(Part part) =>
        part.Panel.Place.X is Direction.PlusZ or Direction.MinusZ ? MatchedSide.Length : MatchedSide.Width;
}
