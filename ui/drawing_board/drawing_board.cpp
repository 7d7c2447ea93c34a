#include "ui/drawing_board/drawing_board.h"

#include <QButtonGroup>
#include <QKeyEvent>
#include <QPainter>

#include "indexer/rules/drawing_on_head.h"
#include "ui/drawing_board/drawing_colours.h"
#include "ui/drawing_board/mark_list.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// The line as it is drawn, so that a tool is known by its shape.
QIcon line_icon(StrokeKind kind, const QPalette& palette, double ratio) {
    QPixmap picture(QSize(32, 16) * ratio);
    picture.setDevicePixelRatio(ratio);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    const DrawingColours colours = drawing_colours(palette);
    const bool parting = kind == StrokeKind::parting;
    QPen pen(parting ? colours.parting : colours.line, 3);
    if (!parting) pen.setDashPattern({3, 2});
    painter.setPen(pen);
    painter.drawLine(2, 8, 30, 8);
    return picture;
}

}  // namespace

DrawingBoard::DrawingBoard(QWidget* parent)
    : QWidget(parent),
      tools_(new QButtonGroup(this)),
      canvas_(new HeadCanvas),
      hint_(make_quiet({})),
      marks_(new MarkList) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(space(2));
    all->addWidget(build_tools());
    QHBoxLayout* row = make_row(5);
    row->addWidget(canvas_, 3);
    row->addWidget(marks_, 2);
    all->addLayout(row, 1);
    all->addWidget(hint_);
    connect(canvas_, &HeadCanvas::hint_changed, this, [this] { hint_->setText(canvas_->hint()); });
    connect(canvas_, &HeadCanvas::tool_wanted, this, &DrawingBoard::use);
    connect(canvas_, &HeadCanvas::dropped, this, &DrawingBoard::drop_mark);
    connect(canvas_, &HeadCanvas::taken_out, this,
            [this](std::size_t thing) { take(without_thing(drawing_, thing)); });
    connect(canvas_, &HeadCanvas::drawn, this, [this](const Stroke& stroke) {
        HeadDrawing more = drawing_;
        more.strokes.push_back(stroke);
        take(more);
    });
    connect(marks_, &MarkList::written, this, &DrawingBoard::write);
    connect(marks_, &MarkList::done, this, [this] { canvas_->setFocus(Qt::OtherFocusReason); });
    hint_->setMinimumHeight(2 * hint_->fontMetrics().lineSpacing());  // the head stays in its place
    hint_->setAlignment((hint_->alignment() & ~Qt::AlignVertical_Mask) | Qt::AlignTop);
    use(DrawingTool::parting);
    show_all();
}

QWidget* DrawingBoard::build_tools() {
    auto* tools = new QWidget;
    auto* row = new FlowLayout(space(2));
    tools->setLayout(row);
    row->addWidget(
        add_tool(DrawingTool::parting, tr("Parting"), tr("Draw a parting: a solid line. Key 1.")));
    row->addWidget(
        add_tool(DrawingTool::section, tr("Section"), tr("Draw a section: a dashed line. Key 2.")));
    row->addWidget(add_tool(DrawingTool::mark, tr("Mark"), tr("Put a numbered mark. Key 3.")));
    row->addWidget(
        add_tool(DrawingTool::take_out, tr("Take out"), tr("Take out what is drawn. Key 4.")));
    back_ = make_quiet_button(tr("Undo in the drawing"));
    connect(back_, &QPushButton::clicked, this, [this] { step(past_, undone_); });
    row->addWidget(back_);
    return tools;
}

QPushButton* DrawingBoard::add_tool(DrawingTool tool, const QString& name,
                                    const QString& described) {
    QPushButton* button = make_button(name);
    button->setCheckable(true);
    button->setToolTip(described);
    button->setAccessibleDescription(described);
    button->setIconSize({32, 16});
    tools_->addButton(button, static_cast<int>(tool));
    connect(button, &QPushButton::clicked, this, [this, tool] { use(tool); });
    return button;
}

void DrawingBoard::use(DrawingTool tool) {
    tools_->button(static_cast<int>(tool))->setChecked(true);
    canvas_->use(tool);
    show_tools();
}

// The tool in hand is known by its frame and its bold word.
void DrawingBoard::show_tools() {
    for (QAbstractButton* button : tools_->buttons()) {
        show_kind(*button, button->isChecked() ? QStringLiteral("chosen") : QString());
    }
    const auto give_line = [this](DrawingTool tool, StrokeKind kind) {
        tools_->button(static_cast<int>(tool))
            ->setIcon(line_icon(kind, palette(), devicePixelRatioF()));
    };
    give_line(DrawingTool::parting, StrokeKind::parting);
    give_line(DrawingTool::section, StrokeKind::section);
}

void DrawingBoard::show_drawing(const HeadDrawing& drawing) {
    if (drawing == drawing_) return;
    drawing_ = drawing;
    past_.clear();
    undone_.clear();
    show_all();
}

void DrawingBoard::show_all() {
    back_->setEnabled(!past_.empty());
    canvas_->show_drawing(drawing_);
    marks_->show_marks(drawing_.marks);
}

void DrawingBoard::take(const HeadDrawing& drawing) {
    past_.push_back(std::exchange(drawing_, drawing));
    undone_.clear();
    show_all();
    emit changed();
}

void DrawingBoard::drop_mark(PlanPoint at) {
    const int number = free_number(drawing_);
    HeadDrawing more = drawing_;
    more.marks.push_back({number, at, {}});
    std::sort(more.marks.begin(), more.marks.end(),
              [](const PlanMark& a, const PlanMark& b) { return a.number < b.number; });
    take(more);
    marks_->write_at(number);
}

// The field has an undo of its own.
void DrawingBoard::write(int number, const QString& words) {
    for (PlanMark& mark : drawing_.marks) {
        if (mark.number == number) mark.words = to_utf8(words);
    }
    show_all();
    emit changed();
}

void DrawingBoard::step(std::vector<HeadDrawing>& from, std::vector<HeadDrawing>& to) {
    if (from.empty()) return;
    to.push_back(std::exchange(drawing_, from.back()));
    from.pop_back();
    show_all();
    emit changed();
}

bool DrawingBoard::undoes(const QKeyEvent& key) const {
    return (key.matches(QKeySequence::Undo) && !past_.empty()) ||
           (key.matches(QKeySequence::Redo) && !undone_.empty());
}

bool DrawingBoard::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && undoes(static_cast<QKeyEvent&>(*event))) {
        event->accept();
        return true;
    }
    return QWidget::event(event);
}

void DrawingBoard::keyPressEvent(QKeyEvent* event) {
    if (!undoes(*event)) return QWidget::keyPressEvent(event);
    if (event->matches(QKeySequence::Undo)) {
        step(past_, undone_);
    } else {
        step(undone_, past_);
    }
}

void DrawingBoard::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) show_tools();
}

}  // namespace quarterturn
