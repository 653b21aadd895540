using Nookwright.Cutting;
using Nookwright.Sawing;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>Why a pinned sheet cannot be kept as it was planned; its parts are then planned like all others.</summary>
internal static class PinFindings
{
    /// <summary>What has changed since it was pinned; null when it can still be cut as it is.</summary>
    /// <param name="pin">The sheet.</param>
    /// <param name="request">What is asked for now.</param>
    /// <param name="earlier">Pinned sheets that are kept before it.</param>
    public static Finding? Of(PinnedSheet pin, CutRequest request, IReadOnlyList<PinnedSheet> earlier)
    {
        var now = request.Parts.ToDictionary(p => p.Id);
        if (pin.Parts.Where(id => !now.ContainsKey(id)).ToList() is { Count: > 0 } gone)
            return Finding(
                pin,
                "gone",
                $"{Names(gone)} {(gone.Count == 1 ? "is" : "are")} no part of the job any more"
            );
        if (pin.Asked.Parts.FirstOrDefault(was => !IsSame(was, now[was.Id])) is { } was)
            return Finding(pin, "changed", Change(was, now[was.Id], request));
        if (earlier.FirstOrDefault(e => e.Parts.Intersect(pin.Parts).Any()) is { } other)
            return Finding(
                pin,
                "twice",
                $"{Names([.. pin.Parts.Intersect(other.Parts)])} also come from {other.Id}, which is kept"
            );
        if (request.Stock.FirstOrDefault(s => s.Id == pin.Sheet.Stock) is not { } stock)
            return Finding(pin, "no-stock", $"it is of {pin.Sheet.Stock}, and there is no such stock any more");
        if (earlier.Count(e => e.Sheet.Stock == stock.Id) >= stock.Quantity)
            return Finding(
                pin,
                "too-few",
                $"there {(stock.Quantity == 1 ? "is" : "are")} but {stock.Quantity} of {stock.Id}"
            );
        if (request.Runs.FirstOrDefault(r => IsTorn(r, pin)) is { } run)
            return Finding(pin, "run", $"running grain {run.Id} now goes on beyond it");
        var asked = PinnedSheet.AskedOf(request, [.. pin.Parts.Select(id => now[id])], stock.Id);
        return VirtualSaw.Run(pin.Plan, asked).Why is { } why
            ? Finding(pin, "not-cut", $"it can no longer be cut as it was. {why.TrimEnd('.')}")
            : null;
    }

    /// <summary>Its cuts come in an order that the other wishes, or what must match, do not allow.</summary>
    public static Finding Order(PinnedSheet pin) =>
        Finding(
            pin,
            "order",
            "what must match, or a running grain, asks for its visits in another order than its cuts do"
        );

    private static string Change(CutPart was, CutPart now, CutRequest request)
    {
        string Size(CutPart part) => $"{request.Say(part.Length)} × {request.Say(part.Width)}";
        if (was.IsHeld != now.IsHeld)
            return now.IsHeld
                ? $"{now.Id} waits for a reading again"
                : $"the reading that {now.Id} waited for is there";
        return (was.Length, was.Width) != (now.Length, now.Width)
            ? $"{now.Id} is now {Size(now)}, and {Size(was)} on that sheet"
            : $"{now.Id} is now of {now.Material} with its figure along {now.Figure}".ToLowerInvariant();
    }

    private static bool IsSame(CutPart was, CutPart now) =>
        (was.Length, was.Width, was.Material, was.Figure, was.IsHeld)
        == (now.Length, now.Width, now.Material, now.Figure, now.IsHeld);

    private static bool IsTorn(CutRun run, PinnedSheet pin) =>
        run.Parts.Any(pin.Parts.Contains) && !run.Parts.All(pin.Parts.Contains);

    private static string Names(IReadOnlyList<string> ids) =>
        string.Join(", ", ids.Take(3)) + (ids.Count > 3 ? ", …" : "");

    private static Finding Finding(PinnedSheet pin, string rule, string why) =>
        new(
            $"cutting.pinned-sheet-{rule}",
            Severity.MustMend,
            $"{pin.Id}: this sheet cannot be kept as it was planned: {why}. Its parts are planned anew; let the sheet change, or "
                + "undo what has changed.",
            [pin.Id]
        );
}
