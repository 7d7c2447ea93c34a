#include "ui/running_order/morning_plan_part.h"

#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>

#include "ui/running_order/gaps_part.h"
#include "ui/running_order/morning_chart.h"
#include "ui/running_order/planner.h"
#include "ui/running_order/sentences.h"
#include "ui/running_order/work_list.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int ms_between_looks_at_the_clock = 20'000;

QString joined(const std::vector<std::string>& sentences) {
    QStringList words;
    for (const std::string& sentence : sentences) words << from_utf8(sentence);
    return words.join(QLatin1Char(' '));
}

int minute_of_day(LocalTime time) {
    const auto since = time - std::chrono::floor<std::chrono::days>(time);
    return static_cast<int>(std::chrono::duration_cast<std::chrono::minutes>(since).count());
}

}  // namespace

MorningPlanPart::MorningPlanPart(Session& session, QWidget* parent)
    : QWidget(parent), session_(session) {
    build();
    auto* clock = new QTimer(this);
    connect(clock, &QTimer::timeout, this, &MorningPlanPart::show_now);
    clock->start(ms_between_looks_at_the_clock);
}

bool MorningPlanPart::is_held() const {
    return chart_->is_dragging();
}

void MorningPlanPart::show_plan(const WeddingMorning& morning,
                                const std::optional<MorningPlan>& plan, const Planner& planner) {
    morning_ = morning;
    plan_ = plan;
    best_ = planner.best();
    refusal_ = planner.refusal();
    show_head();
    gaps_->show_gaps(morning_);
    const bool any = plan_ && !plan_->seats.empty();
    planned_->setVisible(any);
    if (!any) return;
    chart_->show_plan(morning_.needs, plan_->seats);
    list_->show_plan(morning_, *plan_);
    show_consequences();
    show_now();
}

void MorningPlanPart::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(2), 0, space(3), space(6));
    column->setSpacing(space(2));
    title_ = make_title({});
    when_ = make_quiet({});
    possible_ = make_heading({});
    build_gaps();
    planned_ = new QWidget;
    auto* planned = new QVBoxLayout(planned_);
    planned->setContentsMargins(0, space(1), 0, 0);
    planned->setSpacing(space(3));
    planned->addWidget(build_chart());
    const Card card = make_card();
    list_ = new WorkList;
    connect(list_, &WorkList::chosen, this, &MorningPlanPart::chosen);
    card.column->addWidget(make_heading(tr("In the order of work")));
    card.column->addWidget(list_);
    planned->addWidget(card.frame);
    column->addWidget(title_);
    column->addWidget(when_);
    column->addSpacing(space(1));
    column->addWidget(possible_);
    column->addWidget(gaps_);
    column->addWidget(planned_);
    column->addStretch();
}

void MorningPlanPart::build_gaps() {
    gaps_ = new GapsPart;
    const auto go_to_wedding = [this] {
        session_.go_to({.moment = Moment::coming_up, .wedding = morning_.wedding.id});
    };
    connect(gaps_, &GapsPart::party_wanted, this, go_to_wedding);
    connect(gaps_, &GapsPart::led_to_wedding, this, go_to_wedding);
    connect(gaps_, &GapsPart::led_to_look, this,
            [this](LookId look) { session_.go_to({.moment = Moment::recipe, .look = look}); });
    connect(gaps_, &GapsPart::minutes_given, this, &MorningPlanPart::minutes_given);
    connect(gaps_, &GapsPart::ready_by_given, this, &MorningPlanPart::ready_by_given);
    connect(gaps_, &GapsPart::not_understood, this, &MorningPlanPart::not_understood);
}

QWidget* MorningPlanPart::build_chart() {
    const Card card = make_card();
    card.column->setContentsMargins(space(4), space(4), space(3), space(4));
    chart_ = new MorningChart;
    chart_scroll_ = new QScrollArea;
    chart_scroll_->setWidgetResizable(true);
    chart_scroll_->setFrameShape(QFrame::NoFrame);
    chart_scroll_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    chart_scroll_->setFocusPolicy(Qt::NoFocus);
    connect(chart_, &MorningChart::laid_out, this, [this] {
        chart_scroll_->setFixedHeight(chart_->minimumSizeHint().height() +
                                      chart_scroll_->horizontalScrollBar()->sizeHint().height());
    });
    chart_scroll_->setWidget(chart_);
    chart_->setAutoFillBackground(false);  // the card shows through
    chart_scroll_->viewport()->setAutoFillBackground(false);
    sentences_ = new Sentences;
    remarks_ = make_quiet({});
    connect(chart_, &MorningChart::tried, this, [this](const std::vector<Seat>& seats) {
        sentences_->show_consequences(tr("If you let go here"),
                                      check_morning(morning_.needs, seats));
    });
    connect(chart_, &MorningChart::given_up, this, &MorningPlanPart::given_up);
    connect(chart_, &MorningChart::changed, this, &MorningPlanPart::moved);
    connect(chart_, &MorningChart::chosen, this, &MorningPlanPart::chosen);
    connect(chart_, &MorningChart::looked_at, this,
            [this](QWidget* bar) { chart_scroll_->ensureWidgetVisible(bar, space(4), 0); });
    card.column->addWidget(chart_scroll_);
    card.column->addWidget(sentences_);
    card.column->addWidget(remarks_);
    return card.frame;
}

void MorningPlanPart::show_head() {
    const Wedding& wedding = morning_.wedding;
    title_->setText(from_utf8(wedding.name));
    QStringList when{shown(wedding.date)};
    if (!wedding.venue.empty()) when << from_utf8(wedding.venue);
    if (!wedding.ready_by.empty()) when << tr("ready by %1").arg(from_utf8(wedding.ready_by));
    when_->setText(when.join(QStringLiteral("  ·  ")));
    possible_->setText(possible_words());
}

QString MorningPlanPart::possible_words() const {
    if (morning_.wedding.party.empty()) {
        return tr("Nobody is in the party yet, so there is no morning to plan.");
    }
    if (morning_.needs.clients.empty() && !morning_.cannot.empty()) {
        return tr("Nobody can be planned yet. This is missing:");
    }
    if (!refusal_.isEmpty()) return refusal_;
    if (!best_) return tr("Planning the morning…");
    const MorningPlan& best = *best_;
    if (plan_ && plan_->by_hand && !plan_->consequences.broken.empty()) {
        return QStringLiteral("▲  ") + tr("As it was moved by hand, this plan cannot be kept:");
    }
    const bool well = best.consequences.late_in_all == 0;
    QString words =
        (well ? QStringLiteral("✓  ") : QStringLiteral("▲  ")) + from_utf8(possible_text(best));
    if (!morning_.cannot.empty()) words += QLatin1Char(' ') + tr("Not everybody is in it yet:");
    if (!well && plan_ && plan_->by_hand) {
        words += QLatin1Char(' ') + joined(best.consequences.lateness);
    }
    return words;
}

void MorningPlanPart::show_consequences() {
    if (!plan_) return;
    if (!plan_->by_hand && !best_) {
        sentences_->show_heading(tr("Planning anew…"));
    } else {
        sentences_->show_consequences(
            plan_->by_hand ? tr("As you changed it") : tr("As it is planned"), plan_->consequences);
    }
    QStringList remarks;
    if (!morning_.assumed.empty()) remarks << from_utf8(morning_.assumed);
    const auto unproven = unproven_text(*plan_);
    if (unproven && !plan_->by_hand) remarks << from_utf8(*unproven);
    remarks_->setText(remarks.join(QLatin1Char(' ')));
    remarks_->setVisible(!remarks.isEmpty());
}

void MorningPlanPart::show_now() {
    const bool today = morning_.wedding.date == session_.today();
    chart_->show_now(today ? std::optional(minute_of_day(session_.now())) : std::nullopt);
}

}  // namespace quarterturn
