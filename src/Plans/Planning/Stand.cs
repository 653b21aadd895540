using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>A piece that waits beside the table saw for its next cuts.</summary>
internal sealed class Stand
{
    public Stand(Wood wood, Node node)
    {
        (Wood, Node, Axis) = (wood, node, node.Axis);
        Pending = [.. node.Children];
    }

    public Stand(Wood wood, IReadOnlyList<RunMember> line, SheetAxis axis) =>
        (Wood, Line, Axis, Pending) = (wood, line, axis, []);

    public Wood Wood { get; set; }

    public Node? Node { get; }

    /// <summary>The members of a run, cut in this order from the low end; or null.</summary>
    public IReadOnlyList<RunMember>? Line { get; }

    public SheetAxis Axis { get; }

    public int Cut { get; set; }

    public List<Node> Pending { get; }

    public bool IsDone { get; set; }
}
