#include "ui/wedding_morning/recipe_panel.h"

#include <QScrollArea>

#include "indexer/looks/board_words.h"
#include "ui/drawing_board/drawing_view.h"
#include "ui/theme/theme.h"
#include "ui/wedding_morning/board_button.h"
#include "ui/wedding_morning/marked_line.h"
#include "ui/wedding_morning/step_row.h"
#include "ui/wedding_morning/tick_box.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// Headings of recipe_parts() that are marked by more than their words.
constexpr const char* accessory_heading = "Accessory";
constexpr const char* feedback_heading = "Feedback";

bool same_step(const StepRow* row, const BoardStep& step) {
    const BoardStep& shown = row->step();
    return shown.words == step.words && shown.cautions == step.cautions &&
           shown.photos == step.photos && shown.waiting_minutes == step.waiting_minutes &&
           shown.waits_for == step.waits_for;
}

int done_before_next(const BoardLook& look) {
    return static_cast<int>(std::ranges::find(look.steps, false, &BoardStep::done) -
                            look.steps.begin());
}

QString standing_in_words(const BoardLook& look) {
    const QString standing = from_utf8(look.standing);
    if (look.changes.empty()) return standing;
    const QString changes =
        RecipePanel::tr("%n change(s) since.", nullptr, static_cast<int>(look.changes.size()));
    return standing + QLatin1Char(' ') + changes;
}

}  // namespace

RecipePanel::RecipePanel(const PictureLoader& pictures, const BoardType& type, QWidget* parent)
    : QWidget(parent),
      pictures_(pictures),
      type_(type),
      standing_(make_column(0)),
      done_(make_text({})),
      pins_(make_text({})),
      to_next_(make_button({})),
      all_(new QVBoxLayout(this)) {
    all_->setContentsMargins(0, 0, 0, 0);
    all_->setSpacing(type.px(0.25));
    build_head();
}

void RecipePanel::build_head() {
    all_->addLayout(standing_);
    auto* counts = new QWidget;
    auto* counted = new QVBoxLayout(counts);
    counted->setContentsMargins(0, 0, 0, 0);
    counted->setSpacing(0);
    for (QLabel* count : {done_, pins_}) {
        count->setFont(type_.font(BoardRole::heading));
        count->setWordWrap(false);
        count->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
        counted->addWidget(count);
    }
    suit_board(*to_next_, type_);
    connect(to_next_, &QPushButton::clicked, this, &RecipePanel::go_to_next);
    auto* row = new FlowLayout(type_.px(0.5));
    row->addWidget(counts);
    row->addWidget(to_next_);
    all_->addLayout(row);
}

void RecipePanel::show_look(const BoardLook& look) {
    const bool same = shows_the_same(look);
    const StepRow* before = same ? next_step() : nullptr;
    if (!same) build(look);
    shown_ = look;
    show_progress(look);
    for (std::size_t i = 0; i < steps_.size(); ++i) {
        steps_[i]->show_done(look.steps[i].done, false);
    }
    if (StepRow* next = next_step()) next->show_done(false, true);
    fit_scroll();
    show_pictures();
    if (same) {
        move_to_next(before);
    } else if (!steps_.empty() && steps_.front()->step().done) {
        move_to_next(nullptr);
    }
}

bool RecipePanel::shows_the_same(const BoardLook& look) const {
    return shown_ && shown_->state.look.id == look.state.look.id &&
           shown_->standing == look.standing && shown_->changes == look.changes &&
           shown_->before_build == look.before_build && shown_->after_build == look.after_build &&
           std::ranges::equal(steps_, look.steps, same_step);
}

void RecipePanel::build(const BoardLook& look) {
    empty_layout(standing_);
    standing_->addWidget(new MarkedLine(look.state.sign_off ? LineMark::sealed : LineMark::open,
                                        standing_in_words(look), type_, BoardRole::small));
    if (scroll_) {
        scroll_->hide();
        scroll_->deleteLater();
    }
    auto* content = new QWidget;
    column_ = new QVBoxLayout(content);
    const int beside_bar = type_.px(0.8);
    column_->setContentsMargins(isRightToLeft() ? beside_bar : 0, 0,
                                isRightToLeft() ? 0 : beside_bar, type_.px(1));
    column_->setSpacing(type_.px(0.4));
    steps_.clear();
    add_changes(look);
    if (look.recipe()) {
        add_parts(look.before_build, look.before_build_cautions);
        add_drawing(*look.recipe());
        add_steps(look);
        add_parts(look.after_build, look.after_build_cautions);
    } else {
        add_no_recipe(look);
    }
    column_->addStretch(1);
    scroll_ = make_scrolling_side(content);
    scroll_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored);
    content->installEventFilter(this);
    all_->addWidget(scroll_, 1);
    fit_scroll();
}

void RecipePanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit_scroll();
}

void RecipePanel::add_changes(const BoardLook& look) {
    for (const std::string& change : look.changes) {
        column_->addWidget(
            new MarkedLine(LineMark::changed, from_utf8(change), type_, BoardRole::small));
    }
}

void RecipePanel::add_parts(const std::vector<RecipePart>& parts,
                            const std::vector<std::string>& cautions) {
    for (const RecipePart& part : parts) {
        const QString heading = from_utf8(part.heading);
        const bool said = part.heading == feedback_heading;
        const bool marked = said || part.heading == accessory_heading;
        if (marked) {
            column_->addWidget(new MarkedLine(said ? LineMark::speech : LineMark::accessory,
                                              said ? tr("What she said") : heading, type_,
                                              BoardRole::heading));
        } else {
            QLabel* title = make_quiet(heading);
            title->setFont(type_.font(BoardRole::small));
            column_->addWidget(title);
        }
        for (const std::string& line : part.lines) {
            QLabel* words = make_text(from_utf8(line));
            words->setFont(type_.font(marked ? BoardRole::body : BoardRole::small));
            column_->addWidget(words);
        }
        column_->addSpacing(type_.px(0.3));
    }
    if (!cautions.empty()) {
        column_->addWidget(
            new MarkedLine(LineMark::heat, lines_of(cautions), type_, BoardRole::small));
    }
}

// Where the parting runs, and where each accessory sits.
void RecipePanel::add_drawing(const Recipe& recipe) {
    const HeadDrawing drawing = drawing_with_accessories(recipe);
    if (drawing == HeadDrawing{}) return;
    column_->addWidget(new DrawingView(drawing), 0, Qt::AlignLeading);
    for (const PlanMark& mark : drawing.marks) {
        if (std::ranges::find(recipe.head_plan.marks, mark) != recipe.head_plan.marks.end()) {
            continue;  // stands in words above
        }
        column_->addWidget(
            new MarkedLine(LineMark::accessory,
                           tr("Mark %1: %2").arg(mark.number).arg(from_utf8(mark.words)), type_));
    }
}

void RecipePanel::add_steps(const BoardLook& look) {
    for (const BoardStep& step : look.steps) {
        const int index = static_cast<int>(steps_.size());
        auto* row = new StepRow(index + 1, step, type_);
        connect(row, &StepRow::ticked, this,
                [this, index](bool done) { emit ticked(index, done); });
        connect(row, &StepRow::timer_asked, this, [this, index] { emit timer_asked(index); });
        connect(row, &StepRow::photo_asked, this,
                [this, index](std::size_t photo) { emit photo_asked(index, photo); });
        column_->addWidget(row);
        steps_.push_back(row);
    }
}

void RecipePanel::add_no_recipe(const BoardLook& look) {
    QLabel* words =
        make_text(tr("%1 has no recipe yet.").arg(isolated(from_utf8(look.state.look.name))));
    words->setFont(type_.font(BoardRole::body));
    column_->addWidget(words);
    QPushButton* write = make_next_button(tr("Write the recipe"));
    suit_board(*write, type_, BoardRole::body);
    connect(write, &QPushButton::clicked, this, &RecipePanel::recipe_asked);
    column_->addWidget(write, 0, Qt::AlignLeading);
}

void RecipePanel::show_progress(const BoardLook& look) {
    const int steps = static_cast<int>(look.steps.size());
    const int done = static_cast<int>(std::ranges::count(look.steps, true, &BoardStep::done));
    done_->setText(tr("Steps: %1 of %2 done").arg(done).arg(steps));
    pins_->setText(from_utf8(all_pins_text(look)));
    pins_->setVisible(!pins_->text().isEmpty());
    to_next_->setText(tr("To step %1").arg(done_before_next(look) + 1));
    to_next_->setVisible(done < steps);
    done_->setVisible(steps > 0);
}

StepRow* RecipePanel::next_step() const {
    const auto next =
        std::ranges::find_if(steps_, [](const StepRow* row) { return !row->step().done; });
    return next == steps_.end() ? nullptr : *next;
}

void RecipePanel::show_pictures() {
    for (StepRow* row : steps_) row->show_pictures(pictures_, veiled_);
}

void RecipePanel::veil_photos(bool veiled) {
    veiled_ = veiled;
    show_pictures();
}

std::vector<PictureWish> RecipePanel::wishes() const {
    std::vector<PictureWish> wishes;
    for (const StepRow* row : steps_) {
        for (const Photo& photo : row->step().photos) {
            wishes.push_back({photo, row->photo_edge()});
        }
    }
    return wishes;
}

}  // namespace quarterturn
