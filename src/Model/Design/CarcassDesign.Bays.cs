using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>What stands inside a box: partitions, the bays between them, and shelves.</summary>
/// <remarks>Partitions and fixed shelves butt against their neighbours, whatever the joint at the box's corners.</remarks>
internal sealed partial class CarcassDesign
{
    private const string UsualSetBack =
        "a shelf on pins stands back 1/4 in or 6 mm from the front (common practice, no source)";
    private const string UsualClearance =
        "a shelf on pins is 1/8 in or 3 mm shorter than its bay in all (common practice, no source)";

    internal int Bays => box.Partitions.Count + 1;

    private void NameBays()
    {
        for (var bay = 1; bay <= Bays; bay++)
        {
            var number = bay;
            Name($"bay-{number}.left", s => BayLeft(s, number));
            Name($"bay-{number}.width", s => BayWidth(s, number));
        }
        foreach (var partition in box.Partitions)
            NameMember(
                partition.Id,
                Fits("above the partition", s => Of(s, "inside-height")),
                Fits("behind the partition", PartitionDepth)
            );
    }

    private void NameShelves()
    {
        foreach (var shelf in box.Shelves)
            NameMember(
                shelf.Id,
                Fits("in the shelf's bay", s => ShelfLength(s, shelf)),
                Fits("behind the shelf", s => ShelfDepth(s, shelf))
            );
    }

    /// <summary>From the inside of the left side to the left end of a bay.</summary>
    private Traced BayLeft(Wanted sizes, int bay) =>
        bay == 1
            ? Traced.ByRule(Length.Zero, "the first bay starts at the inside of the left side")
            : PartitionLeft(sizes, bay - 2) + Thickness(sizes);

    private Traced BayWidth(Wanted sizes, int bay) =>
        bay == Bays && bay == 1 ? Of(sizes, "inside-width")
        : box.Partitions.All(partition => partition.At is null) ? EvenBay(sizes)
        : bay == Bays ? Of(sizes, "inside-width") - Of(sizes, $"bay-{bay}.left")
        : PartitionLeft(sizes, bay - 1) - Of(sizes, $"bay-{bay}.left");

    private Traced EvenBay(Wanted sizes) => (Of(sizes, "inside-width") - Thickness(sizes) * (Bays - 1)) / Bays;

    private Traced PartitionLeft(Wanted sizes, int index)
    {
        var partition = box.Partitions[index];
        return partition.At is { } at
            ? sizes.Written(Field($"partitions/{partition.Id}/at"), at)
            : EvenBay(sizes) * (index + 1) + Thickness(sizes) * index;
    }

    private Traced ShelfLength(Wanted sizes, BoxShelf shelf)
    {
        if (shelf.Bay > Bays)
            return sizes.Fail(NoSuchBay(shelf));
        var bay = Of(sizes, $"bay-{shelf.Bay}.width");
        return Clearance(sizes, shelf) is { } clearance ? bay - clearance : bay;
    }

    private Traced ShelfDepth(Wanted sizes, BoxShelf shelf)
    {
        var depth = Of(sizes, "inside-depth");
        return SetBack(sizes, shelf) is { } setBack ? depth - setBack : depth;
    }

    /// <summary>From the front edge to the shelf; where nothing is said, inset doors have room before it.</summary>
    private Traced? SetBack(Wanted sizes, BoxShelf shelf)
    {
        if (shelf.SetBack is { } given)
            return sizes.Written(Field($"shelves/{shelf.Id}/setBack"), given);
        var usual = shelf.Kind == ShelfKind.Pins ? Job.Usual(Quarter, Length.Millimetre * 6, UsualSetBack) : null;
        return InsetDoorsTake(sizes, shelf.Bay) is not { } taken ? usual
            : usual is null ? taken
            : taken + usual;
    }

    /// <summary>A partition stands behind inset doors that close the whole box.</summary>
    private Traced? PartitionSetBack(Wanted sizes) =>
        InsetDoors(doors => doors.Bay is null) is { } inset ? DoorThickness(sizes, inset) : null;

    private Traced PartitionDepth(Wanted sizes)
    {
        var depth = Of(sizes, "inside-depth");
        return PartitionSetBack(sizes) is { } setBack ? depth - setBack : depth;
    }

    private Traced? Clearance(Wanted sizes, BoxShelf shelf) =>
        shelf.Clearance is { } given ? sizes.Written(Field($"shelves/{shelf.Id}/clearance"), given)
        : shelf.Kind == ShelfKind.Pins ? Job.Usual(Half(Quarter), Length.Millimetre * 3, UsualClearance)
        : null;

    private static Length Quarter => Length.FromInches(0, 1, 4);

    private Traced ShelfAt(Wanted sizes, BoxShelf shelf) => sizes.Written(Field($"shelves/{shelf.Id}/at"), shelf.At);

    private IEnumerable<Board> InnerBoards(Wanted sizes, BoxFrame frame) =>
        box
            .Partitions.Select((partition, i) => PartitionBoard(sizes, frame, i))
            .Concat(box.Shelves.Select(shelf => ShelfBoard(sizes, frame, shelf)));

    private Board PartitionBoard(Wanted sizes, BoxFrame frame, int index)
    {
        var left = frame.Thickness + PartitionLeft(sizes, index).Length;
        var low = new Point3(left, PartitionSetBack(sizes)?.Length ?? Length.Zero, frame.Thickness);
        return Member(sizes, box.Partitions[index].Id, PanelRole.Partition, Attitude.LeftOnEnd, low) with
        {
            Called = CalledBy("partition", box.Partitions[index].Id),
        };
    }

    private Board ShelfBoard(Wanted sizes, BoxFrame frame, BoxShelf shelf)
    {
        var length = At(sizes, $"{shelf.Id}.length"); // First, because it knows whether there is such a bay.
        var play = At(sizes, $"bay-{shelf.Bay}.width") - length;
        var low = new Point3(
            frame.Thickness + At(sizes, $"bay-{shelf.Bay}.left") + Half(play),
            SetBack(sizes, shelf)?.Length ?? Length.Zero,
            frame.Thickness + ShelfRise(sizes, shelf)
        );
        return Member(sizes, shelf.Id, PanelRole.BoxShelf, Attitude.Level, low) with
        {
            Called = CalledBy("shelf", shelf.Id),
        };
    }

    /// <summary>"shelf 2" for a shelf of that id, "upper shelf" for one called so already.</summary>
    private static string CalledBy(string kind, string id) =>
        id.Contains(kind, StringComparison.Ordinal) ? id.Replace('-', ' ') : $"{kind} {id}";

    private Refusal NoSuchBay(BoxShelf shelf) =>
        new(
            $"shelf {shelf.Id} of {Id} is in bay {shelf.Bay}, and the box has {Bays}; move it to another bay or add a partition.",
            Field($"shelves/{shelf.Id}/bay")
        )
        {
            Rule = "carcass.no-such-bay",
        };
}
