#include "ui/recipe/recipe_screen.h"

#include <QApplication>
#include <QScrollArea>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>

#include "ui/look_choice/look_choice.h"
#include "ui/recipe/recipe_parts.h"
#include "ui/recipe/record_list.h"
#include "ui/recipe/side_part.h"
#include "ui/recipe/starting_part.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int side_steps = 84;

}  // namespace

RecipeScreen::RecipeScreen(Session& session)
    : session_(session), aids_(session), in_hand_(session) {
    build();
    add_keys();
    connect(&in_hand_, &RecipeInHand::changed, side_, &SidePart::show_kept);
}

QString RecipeScreen::help() const {
    return tr(
        "The recipe says in working order how the look is made. Enter unfolds a part, Escape folds "
        "it; Ctrl+Page Down and Ctrl+Page Up go from part to part.\n"
        "A step is written in one line as you would say it, and Enter adds it. Within a step, a "
        "product or another line, Alt+Up and Alt+Down move it, Alt+Shift+Down makes one more like "
        "it and Alt+Delete takes it out. Ctrl+V puts a picture from the clipboard into the step.\n"
        "What you write is kept as a draft by itself; Ctrl+S saves it as a revision.");
}

void RecipeScreen::build() {
    pages_ = new QStackedWidget;
    empty_ = new EmptyPage(tr("Here you write down how a look is made, so that it can be made "
                              "again. There is no look yet: it is added to a client."),
                           tr("See what's coming up"));
    connect(empty_, &EmptyPage::started, this,
            [this] { session_.go_to({.moment = Moment::coming_up}); });
    page_ = build_page();
    pages_->addWidget(empty_);
    pages_->addWidget(page_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(pages_);
}

QWidget* RecipeScreen::build_page() {
    auto* page = new QWidget;
    auto* row = new QHBoxLayout(page);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(build_recipe(), 1);
    side_ = new SidePart(in_hand_);
    QScrollArea* beside = make_scrolling_side(side_);
    beside->setFixedWidth(space(side_steps));
    connect(side_, &SidePart::asked_for, this, &RecipeScreen::go_to_part);
    row->addWidget(beside);
    return page;
}

QWidget* RecipeScreen::build_recipe() {
    const ScrollingPage page = make_scrolling_page();
    scroll_ = page.scroll;
    looks_ = new LookChoice(session_);
    connect(looks_, &LookChoice::chosen, this, [this](LookId look) {
        session_.choose_look(look);
        session_.attempt([this] { refresh(); });
    });
    title_ = make_title({});
    revision_ = make_quiet({});
    starting_ = new StartingPart(session_, in_hand_);
    page.column->addWidget(looks_);
    page.column->addWidget(title_);
    page.column->addWidget(revision_);
    page.column->addWidget(starting_);
    parts_ = make_recipe_parts(aids_);
    for (PartCard* part : parts_) {
        page.column->addWidget(part);
        connect(part, &PartCard::changed, this, [this] {
            in_hand_.write(written());
            show_findings();
        });
        connect(part, &PartCard::took_out, this,
                [this](const QString& said) { in_hand_.take_out(said, written()); });
    }
    page.column->addStretch();
    return page.scroll;
}

void RecipeScreen::add_keys() {
    const auto add = [this](const QKeySequence& keys, auto act) {
        auto* shortcut = new QShortcut(keys, this);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    add(QKeySequence::Save, [this] { in_hand_.save(); });
    add(Qt::CTRL | Qt::Key_PageDown, [this] { go_on(1); });
    add(Qt::CTRL | Qt::Key_PageUp, [this] { go_on(-1); });
    const auto add_for_row = [&](const QKeySequence& keys, auto act) {
        add(keys, [act] {
            if (RecordList* list = RecordList::in_hand()) act(*list);
        });
    };
    add_for_row(Qt::ALT | Qt::Key_Up, [](RecordList& list) { list.move_row_in_hand(-1); });
    add_for_row(Qt::ALT | Qt::Key_Down, [](RecordList& list) { list.move_row_in_hand(1); });
    add_for_row(Qt::ALT | Qt::SHIFT | Qt::Key_Down,
                [](RecordList& list) { list.double_row_in_hand(); });
    add_for_row(Qt::ALT | Qt::Key_Delete, [](RecordList& list) { list.remove_row_in_hand(); });
}

void RecipeScreen::arrive(const Place& place) {
    if (place.look) session_.choose_look(place.look);
}

void RecipeScreen::refresh() {
    take_look(likely_look(session_));
    pages_->setCurrentWidget(in_hand_.look() ? page_ : static_cast<QWidget*>(empty_));
    looks_->show_looks(shown_look_);
    if (in_hand_.look()) show_recipe();
}

void RecipeScreen::take_look(std::optional<LookId> id) {
    Library& library = session_.library();
    in_hand_.take_up(id ? library.looks().find(*id) : std::nullopt);
    const auto& look = in_hand_.look();
    if (look) aids_.look_at(*look);
    const auto shown_before = std::exchange(
        shown_look_, look ? std::optional<LookId>(look->id) : std::optional<LookId>());
    if (shown_before == shown_look_) return;
    for (PartCard* part : parts_) part->unfold(part->starts_unfolded());
}

void RecipeScreen::show_recipe() {
    title_->setText(from_utf8(in_hand_.look()->name));
    show_revision();
    starting_->refresh();
    for (PartCard* part : parts_) part->show_recipe(in_hand_.recipe());
    judge_.emplace(session_.library());
    show_findings();
    side_->show_kept();
}

void RecipeScreen::show_revision() {
    const auto& saved = in_hand_.saved();
    if (!saved) return revision_->setText(tr("No revision is saved yet."));
    QString words = tr("Revision %1, saved on %2 at %3")
                        .arg(saved->number)
                        .arg(shown(date_of(saved->saved_at)), clock_shown(saved->saved_at));
    const auto sitting =
        saved->sitting ? session_.library().sittings().find(*saved->sitting) : std::nullopt;
    if (sitting) {
        //: when a revision was saved, and the kind of sitting it was written at
        words = tr("%1, at the %2").arg(words, shown(sitting->kind));
    }
    revision_->setText(words + QStringLiteral("."));
}

void RecipeScreen::show_findings() {
    if (!in_hand_.look() || !judge_) return;
    const Recipe& recipe = in_hand_.recipe();
    for (PartCard* part : parts_) part->take_note_of(recipe);
    session_.attempt([&] {
        const auto written = recipe == Recipe{} ? std::nullopt : std::optional<Recipe>(recipe);
        side_->show_findings(recipe, judge_->findings(*in_hand_.look(), written));
    });
}

Recipe RecipeScreen::written() const {
    Recipe recipe = in_hand_.recipe();
    for (const PartCard* part : parts_) part->read_into(recipe);
    return recipe;
}

void RecipeScreen::go_to_part(RecipePlace place) {
    PartCard* part = parts_[static_cast<std::size_t>(place)];
    part->begin_writing();
    // Once it is laid out.
    QTimer::singleShot(0, part, [this, part] {
        scroll_->ensureWidgetVisible(part, 0, 0);
        if (QWidget* focus = QApplication::focusWidget(); focus && part->isAncestorOf(focus)) {
            scroll_->ensureWidgetVisible(focus);
        }
    });
}

void RecipeScreen::go_on(int by) {
    const auto has_keyboard = [](const PartCard* part) {
        return part->isAncestorOf(QApplication::focusWidget());
    };
    const auto here = std::ranges::find_if(parts_, has_keyboard) - parts_.begin();
    const auto number = static_cast<std::ptrdiff_t>(parts_.size());
    const auto there = here == number ? (by > 0 ? 0 : number - 1) : (here + by + number) % number;
    go_to_part(parts_[static_cast<std::size_t>(there)]->place());
}

void RecipeScreen::hideEvent(QHideEvent* event) {
    in_hand_.keep();
    Screen::hideEvent(event);
}

}  // namespace quarterturn
