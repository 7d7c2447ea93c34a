#include "ui/sign_off/sign_off_screen.h"

#include <QGridLayout>
#include <QPointer>
#include <QScrollArea>
#include <QStackedWidget>
#include <map>

#include "indexer/looks/sign_off.h"
#include "indexer/rules/ring.h"
#include "indexer/rules/sign_off.h"
#include "ui/look_choice/look_choice.h"
#include "ui/shell/session.h"
#include "ui/sign_off/files_part.h"
#include "ui/sign_off/recipe_check.h"
#include "ui/sign_off/seal_mark.h"
#include "ui/sign_off/sentences.h"
#include "ui/sign_off/shot_row.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/reason_field.h"
#include "ui/widgets/shared_row.h"

namespace quarterturn {
namespace {

QString day_and_hour(LocalTime time) {
    //: a date and a time of the clock
    return SignOffScreen::tr("%1 at %2").arg(shown(date_of(time)), clock_shown(time));
}

QVBoxLayout* add_card(SharedRow& cards, const QString& heading, int share) {
    const Card card = make_card();
    card.column->addWidget(make_heading(heading));
    QVBoxLayout* inside = make_column(3);
    card.column->addLayout(inside);
    card.column->addStretch();
    cards.add(card.frame, share);
    return inside;
}

}  // namespace

SignOffScreen::SignOffScreen(Session& session) : session_(session) {
    build();
    connect(&session_.pictures(), &PictureLoader::arrived, this, [this](PhotoId photo) {
        for (ShotRow* row : rows_) {
            if (row->photo() && row->photo()->id == photo) row->show_picture();
        }
    });
}

QString SignOffScreen::help() const {
    return tr(
        "Signing off is your word that a look is complete and can be made again. It seals "
        "its photos and its recipe by their checksums; whatever changes later is told here.\n"
        "A shot that is not needed can be waived with a reason. A signed-off look is opened "
        "again with a reason.");
}

void SignOffScreen::build() {
    pages_ = new QStackedWidget;
    empty_ = new EmptyPage(tr("Here a finished look is signed off, so that it can be made again. "
                              "There is no look yet: it is added to a client."),
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

QWidget* SignOffScreen::build_page() {
    const ScrollingPage page = make_scrolling_page();
    looks_ = new LookChoice(session_);
    connect(looks_, &LookChoice::chosen, this, [this](LookId look) {
        session_.choose_look(look);
        problem_->say({});
        session_.attempt([this] { refresh(); });
        files_->look_at(look_);
    });
    title_ = make_title({});
    standing_ = make_column(3);
    problem_ = new Notice;
    page.column->addWidget(looks_);
    page.column->addWidget(title_);
    page.column->addLayout(standing_);
    page.column->addWidget(problem_);
    files_ = new FilesPart(session_);
    page.column->addWidget(files_);
    auto* cards = new SharedRow(space(5));
    shots_ = add_card(*cards, tr("The shots"), 3);
    recipe_ = new RecipeCheck(session_);
    add_card(*cards, tr("The recipe"), 2)->addWidget(recipe_);
    page.column->addLayout(cards);
    history_ = make_column(1);
    page.column->addLayout(history_);
    page.column->addStretch();
    return page.scroll;
}

void SignOffScreen::arrive(const Place& place) {
    if (place.look) session_.choose_look(place.look);
    problem_->say({});
    files_->look_at(likely_look(session_));
}

ReasonField* SignOffScreen::reason_being_written() const {
    for (ReasonField* field : page_->findChildren<ReasonField*>()) {
        if (field->isVisible()) return field;
    }
    return nullptr;
}

void SignOffScreen::refresh() {
    const auto look = likely_look(session_);
    if (ReasonField* field = reason_being_written(); field != nullptr && look == look_) {
        connect(field, &ReasonField::closed, this, &SignOffScreen::refresh,
                Qt::ConnectionType(Qt::QueuedConnection | Qt::UniqueConnection));
        return;
    }
    look_ = look;
    state_.reset();
    if (look_) state_ = look_state(session_.library(), *look_);
    pages_->setCurrentWidget(state_ ? page_ : static_cast<QWidget*>(empty_));
    looks_->show_looks(look_);
    if (state_) show_state();
}

void SignOffScreen::show_state() {
    //: a client and one of her looks
    title_->setText(tr("%1: %2").arg(from_utf8(state_->client.name), from_utf8(state_->look.name)));
    show_standing();
    show_shots();
    recipe_->show_state(*state_);
    show_history();
}

void SignOffScreen::show_standing() {
    empty_layout(standing_);
    if (state_->sign_off) {
        add_seal();
        add_changes();
    } else {
        add_signing();
    }
}

void SignOffScreen::add_seal() {
    QHBoxLayout* row = make_row(6);
    auto* mark = new SealMark;
    mark->show_ring(ring_of(state_->coverage));
    row->addWidget(mark, 0, Qt::AlignTop);
    QVBoxLayout* column = make_column(2);
    column->addWidget(
        make_heading(tr("Signed off on %1.").arg(day_and_hour(state_->sign_off->signed_at))));
    const int photos = static_cast<int>(state_->sign_off->seal.photos.size());
    column->addWidget(make_text(tr("%n photo(s) and the recipe are sealed.", nullptr, photos)));
    if (state_->changes_since.empty()) {
        column->addWidget(make_quiet(tr("Nothing has changed since.")));
    }
    add_reopening(*column);
    column->addStretch();
    row->addLayout(column, 1);
    standing_->addLayout(row);
}

void SignOffScreen::add_changes() {
    if (state_->changes_since.empty()) return;
    add_notice(*standing_,
               tr("Changed since it was signed off:\n%1").arg(in_lines(state_->changes_since)));
}

void SignOffScreen::add_reopening(QVBoxLayout& column) {
    QHBoxLayout* buttons = make_row(2);
    QPushButton* sheet = make_button(tr("Make the contact sheet"));
    connect(sheet, &QPushButton::clicked, this,
            [this] { session_.go_to({.moment = Moment::contact_sheet, .look = look_}); });
    QPushButton* reopen_button = make_quiet_button(tr("Open it again…"));
    buttons->addWidget(sheet);
    buttons->addWidget(reopen_button);
    buttons->addStretch();
    auto* reason = new ReasonField(tr("Why is it opened again?"), tr("Open it again"));
    connect(reopen_button, &QPushButton::clicked, reason, &ReasonField::ask);
    connect(reason, &ReasonField::given, this, [this](const QString& because) {
        const bool done = session_.attempt(
            [&] { reopen(session_.library(), *look_, to_utf8(because), session_.now()); });
        if (done) session_.touch();
    });
    column.addLayout(buttons);
    column.addWidget(reason);
}

void SignOffScreen::add_signing() {
    const auto against = reasons_against_sign_off(state_->coverage, state_->recipe_findings);
    standing_->addWidget(make_text(
        against.empty()
            ? tr("Nothing stands against it: every required shot is there or waived, and the "
                 "recipe says what is needed. Signing it off is your word that it can be made "
                 "again.")
            : tr("%n thing(s) still stand between this look and its sign-off, each marked below.",
                 nullptr, static_cast<int>(against.size()))));
    QPushButton* button =
        make_next_button(signing_ ? tr("Reading every photo once more…") : tr("Sign it off"));
    button->setEnabled(!signing_ && against.empty());
    connect(button, &QPushButton::clicked, this, &SignOffScreen::sign);
    standing_->addWidget(button, 0, Qt::AlignLeading);
}

void SignOffScreen::sign() {
    signing_ = true;
    problem_->say({});
    show_standing();
    Job* job = session_.start<Sentences>(
        [look = *look_, now = session_.now()](Library& library, Job&) {
            return sign_off(library, look, now);
        },
        [screen = QPointer(this)](const Sentences& reasons) {
            if (!screen) return;
            screen->problem_->say(reasons.empty()
                                      ? QString()
                                      : tr("It is not signed off:\n%1").arg(in_lines(reasons)));
        });
    connect(job, &Job::failed, problem_, &Notice::say);
    // Before the window looks at the records again.
    connect(job, &Job::ended, this, [this] {
        signing_ = false;
        session_.attempt([this] { refresh(); });
    });
}

void SignOffScreen::show_shots() {
    empty_layout(shots_);
    rows_.clear();
    std::vector<PictureWish> wishes;
    auto* grid = new QGridLayout;  // an angle a row: before, and beside it after
    grid->setHorizontalSpacing(space(4));
    grid->setVerticalSpacing(space(3));
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    shots_->addLayout(grid);
    std::map<std::pair<bool, Angle>, int> row_of;
    for (const CoverageLine& line : state_->coverage.lines) {
        auto* row = new ShotRow(session_, *state_, line);
        const auto& [stage, angle] = line.wanted.shot;
        const auto at = row_of.emplace(std::pair(stage == Stage::during, angle),
                                       static_cast<int>(row_of.size()));
        grid->addWidget(row, at.first->second, stage == Stage::after ? 1 : 0, Qt::AlignTop);
        rows_.push_back(row);
        row->show_picture();
        if (row->photo()) wishes.push_back({*row->photo(), small_long_edge});
    }
    session_.pictures().want(this, wishes);
}

void SignOffScreen::show_history() {
    empty_layout(history_);
    for (const SignOff& past : session_.library().sign_offs().all(*look_)) {
        if (!past.reopened_at) continue;
        history_->addWidget(
            make_quiet(tr("Signed off on %1, opened again on %2: %3")
                           .arg(day_and_hour(past.signed_at), day_and_hour(*past.reopened_at),
                                from_utf8(past.reopened_because))));
    }
}

}  // namespace quarterturn
