#include "ui/coming_up/coming_up_screen.h"

#include <QEvent>
#include <QScrollArea>
#include <QStackedLayout>
#include <QTimer>

#include "indexer/backup/reminder.h"
#include "indexer/looks/coming_up.h"
#include "indexer/looks/consents.h"
#include "ui/coming_up/ahead_list.h"
#include "ui/coming_up/client_form.h"
#include "ui/coming_up/end_of_page.h"
#include "ui/coming_up/occasion_card.h"
#include "ui/coming_up/occasion_words.h"
#include "ui/coming_up/past_list.h"
#include "ui/coming_up/sitting_form.h"
#include "ui/coming_up/wedding_form.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {

ComingUpScreen::ComingUpScreen(Session& session)
    : session_(session),
      forms_(make_column(4)),
      ahead_(new AheadList(session)),
      past_(new PastList(session)) {
    ScrollingPage page = make_scrolling_page();
    page.column->addLayout(build_head());
    page.column->addLayout(forms_);
    empty_place_ = make_column(0);
    page.column->addLayout(empty_place_);
    reminders_ = make_column(1);
    page.column->addLayout(reminders_);
    page.column->addWidget(ahead_);
    connect(ahead_, &AheadList::changed, this, &ComingUpScreen::refresh);
    connect(ahead_, &AheadList::all_shown, this,
            [this] { session_.attempt([this] { show_past(); }); });
    page.column->addWidget(past_);
    connect(past_, &PastList::changed, this, &ComingUpScreen::refresh);
    page.column->addStretch();
    end_ = new EndOfPage(*page.scroll);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(page.scroll);
}

QLayout* ComingUpScreen::build_head() {
    QHBoxLayout* row = make_row(2);
    title_ = make_title(tr("What's coming up"));
    title_->installEventFilter(this);
    row->addWidget(title_, 1);
    const auto add = [&](const QString& text, auto make_form) {
        QPushButton* button = make_button(text);
        connect(button, &QPushButton::clicked, this, [this, make_form] { show_form(make_form()); });
        row->addWidget(button);
    };
    add(tr("Add a wedding"), [this] { return new WeddingForm(session_, std::nullopt); });
    add(tr("Add a sitting"),
        [this] { return new SittingForm(session_, further_trial({}, session_.today())); });
    add(tr("Add a client"), [this] { return new ClientForm(session_, std::nullopt); });
    return row;
}

// Made when it is wanted, which is mostly never.
void ComingUpScreen::show_empty(bool shown) {
    if (shown && !empty_) {
        auto* page = new EmptyPage(
            tr("Your weddings and trials appear here by date, with what each still lacks."),
            tr("Add a wedding"));
        connect(page, &EmptyPage::started, this,
                [this] { show_form(new WeddingForm(session_, std::nullopt)); });
        empty_place_->addWidget(page);
        empty_ = page;
    }
    if (empty_) empty_->setVisible(shown);
}

QString ComingUpScreen::help() const {
    return tr(
        "Weddings and sittings by date, today's first. The small ring is the head from "
        "above, front at the top: solid quarters are covered, half-solid ones partly, "
        "hatched ones weak, empty ones missing, a thin line is waived. Click a sentence to go "
        "where it is mended, and a name to see everything that is kept of her.");
}

bool ComingUpScreen::being_changed() const {
    const auto cards = findChildren<OccasionCard*>();
    return std::ranges::any_of(cards, &OccasionCard::being_changed);
}

void ComingUpScreen::refresh() {
    // What she is typing stays; the list follows when she is done.
    if (being_changed()) return;
    std::vector<Occasion> ahead = occasions_ahead(session_.library(), session_.today());
    remind();
    nothing_ahead_ = ahead.empty();
    if (!nothing_ahead_) show_empty(false);
    end_->begin_to_grow();
    ahead_->show_ahead(std::move(ahead), session_.today());
}

// It lies below all that is ahead.
void ComingUpScreen::show_past() {
    std::vector<MonthCount> past = past_months(session_.library(), session_.today());
    show_empty(nothing_ahead_ && past.empty() && forms_->count() == 0);
    past_->show_past(std::move(past), session_.today(), nothing_ahead_);
    end_->end_growing();
}

// All that ever went out is judged for it: the first time, once the screen has been painted.
void ComingUpScreen::remind() {
    waits_to_remind_ = !std::exchange(has_reminded_, true);
    if (!waits_to_remind_) show_reminders();
}

bool ComingUpScreen::eventFilter(QObject* watched, QEvent* event) {
    const bool painted = watched == title_ && event->type() == QEvent::Paint;
    if (painted && std::exchange(waits_to_remind_, false)) {
        QTimer::singleShot(0, this, [this] { session_.attempt([this] { show_reminders(); }); });
    }
    return Screen::eventFilter(watched, event);
}

// What is out there and may not be any longer, which consents and licences end soon, and whether a
// backup is due.
void ComingUpScreen::show_reminders() {
    const ChangeStamp now = change_stamp(session_.library().database());
    if (now == reminded_at_ && session_.today() == reminded_on_) return;
    empty_layout(reminders_);
    const LedgerTasks tasks = ledger_tasks(session_.library(), session_.today(), usual_days_before);
    const Place ledger{.moment = Moment::portfolio, .to_take_down = true};
    const auto add = [this](const QString& sentence, const Place& place) {
        auto* link = new SentenceLink(sentence);
        connect(link, &SentenceLink::clicked, this, [this, place] { session_.go_to(place); });
        reminders_->addWidget(link);
    };
    const auto out_there = static_cast<int>(tasks.to_take_down.size());
    if (out_there > 0) {
        add(tr("%n picture(s) went out and may not be shown any longer.", nullptr, out_there),
            ledger);
    }
    for (const EndingSoon& ending : tasks.ending_soon) add(from_utf8(ending.words), ledger);
    if (const auto reminder = backup_reminder(session_.library(), session_.today())) {
        add(from_utf8(*reminder), {.moment = Moment::keeping_safe});
    }
    reminded_at_ = now;
    reminded_on_ = session_.today();
}

void ComingUpScreen::show_form(RecordForm* form) {
    empty_layout(forms_);
    show_empty(false);
    Card card = make_card();
    card.column->addWidget(form);
    forms_->addWidget(card.frame);
    connect(form, &RecordForm::done, this, [this] {
        empty_layout(forms_);
        refresh();
    });
    form->setFocus();
}

}  // namespace quarterturn
