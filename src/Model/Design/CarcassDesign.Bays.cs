using Nookwright.Geometry;
using Nookwright.Measure;

namespace Nookwright.Design;

/// <summary>The partitions of a box and the bays between them.</summary>
/// <remarks>Partitions butt against bottom and top, whatever the joint at the box's corners.</remarks>
internal sealed partial class CarcassDesign
{
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

    /// <summary>A partition stands behind inset doors that close the whole box.</summary>
    private Traced? PartitionSetBack(Wanted sizes) =>
        InsetDoors(doors => doors.Bay is null) is { } inset ? DoorThickness(sizes, inset) : null;

    private Traced PartitionDepth(Wanted sizes)
    {
        var depth = Of(sizes, "inside-depth");
        return PartitionSetBack(sizes) is { } setBack ? depth - setBack : depth;
    }

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

    /// <summary>"shelf 2" for a shelf of that id, "upper shelf" for one called so already.</summary>
    private static string CalledBy(string kind, string id) =>
        id.Contains(kind, StringComparison.Ordinal) ? id.Replace('-', ' ') : $"{kind} {id}";
}
