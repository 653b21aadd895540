using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>The shelves of a box: how long and deep they are, and where they lie in their bays.</summary>
internal sealed partial class CarcassDesign
{
    private const string UsualSetBack =
        "a shelf on pins stands back 1/4 in or 6 mm from the front (common practice, no source)";
    private const string UsualClearance =
        "a shelf on pins is 1/8 in or 3 mm shorter than its bay in all (common practice, no source)";

    private void NameShelves()
    {
        foreach (var shelf in box.Shelves)
            NameMember(
                shelf.Id,
                Fits("in the shelf's bay", s => ShelfLength(s, shelf)),
                Fits("behind the shelf", s => ShelfDepth(s, shelf))
            );
    }

    private Traced ShelfLength(Wanted sizes, BoxShelf shelf)
    {
        if (shelf.Bay > Bays)
            return sizes.Fail(NoSuchBay(shelf));
        var bay = Of(sizes, $"bay-{shelf.Bay}.width");
        if (LetInEnds(shelf) is > 0 and var ends)
            bay += Of(sizes, "joint-depth") * ends;
        return Clearance(sizes, shelf) is { } clearance ? bay - clearance : bay;
    }

    /// <summary>How many ends of a shelf are let into a side of the box: those of a fixed shelf, in a box with dadoes.</summary>
    /// <remarks>At a partition it butts: two dadoes of half the thickness, back to back, would leave nothing of it.</remarks>
    private int LetInEnds(BoxShelf shelf) =>
        IsLetInShelf(shelf) ? (shelf.Bay == 1 ? 1 : 0) + (shelf.Bay == Bays ? 1 : 0) : 0;

    private bool IsLetInShelf(BoxShelf shelf) => box.Joint == Joint.Dado && shelf.Kind == ShelfKind.Fixed;

    private IEnumerable<Board> LetInShelves(Wanted sizes, BoxFrame frame) =>
        box.Shelves.Where(IsLetInShelf).Select(shelf => ShelfBoard(sizes, frame, shelf));

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

    private Traced? Clearance(Wanted sizes, BoxShelf shelf) =>
        shelf.Clearance is { } given ? sizes.Written(Field($"shelves/{shelf.Id}/clearance"), given)
        : shelf.Kind == ShelfKind.Pins ? Job.Usual(Half(Quarter), Length.Millimetre * 3, UsualClearance)
        : null;

    private static Length Quarter => Length.FromInches(0, 1, 4);

    private Traced ShelfAt(Wanted sizes, BoxShelf shelf) => sizes.Written(Field($"shelves/{shelf.Id}/at"), shelf.At);

    private Board ShelfBoard(Wanted sizes, BoxFrame frame, BoxShelf shelf)
    {
        var length = At(sizes, $"{shelf.Id}.length"); // First, because it knows whether there is such a bay.
        var let = LetInEnds(shelf) > 0 ? At(sizes, "joint-depth") : Length.Zero;
        var play = At(sizes, $"bay-{shelf.Bay}.width") + (let * LetInEnds(shelf)) - length;
        var start = shelf.Bay == 1 ? frame.Thickness - let : frame.Thickness;
        var low = new Point3(
            start + At(sizes, $"bay-{shelf.Bay}.left") + Half(play),
            SetBack(sizes, shelf)?.Length ?? Length.Zero,
            frame.Thickness + ShelfRise(sizes, shelf)
        );
        return Member(sizes, shelf.Id, PanelRole.BoxShelf, Attitude.Level, low) with
        {
            Called = CalledBy("shelf", shelf.Id),
        };
    }

    private Refusal NoSuchBay(BoxShelf shelf) =>
        new(
            $"shelf {shelf.Id} of {Id} is in bay {shelf.Bay}, and the box has {Bays}; move it to another bay or add a partition.",
            Field($"shelves/{shelf.Id}/bay")
        )
        {
            Rule = "carcass.no-such-bay",
        };
}
