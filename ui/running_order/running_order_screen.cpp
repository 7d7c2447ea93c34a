#include "ui/running_order/running_order_screen.h"

#include <QComboBox>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>
#include <QTimer>

#include "indexer/looks/exported_record.h"
#include "indexer/looks/kit_list.h"
#include "indexer/sheet/running_order_sheet.h"
#include "indexer/sheet/wording.h"
#include "ui/painter/paint.h"
#include "ui/printing/ways_out.h"
#include "ui/running_order/client_part.h"
#include "ui/running_order/morning_chart.h"
#include "ui/running_order/morning_edits.h"
#include "ui/running_order/planner.h"
#include "ui/running_order/sentences.h"
#include "ui/running_order/stylists_part.h"
#include "ui/running_order/work_list.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int side_steps = 72;
constexpr int ms_between_looks_at_the_clock = 20'000;

QVariant key_of(WeddingId wedding) {
    return QVariant::fromValue(qlonglong{wedding.value});
}

QString joined(const std::vector<std::string>& sentences) {
    QStringList words;
    for (const std::string& sentence : sentences) words << from_utf8(sentence);
    return words.join(QLatin1Char(' '));
}

// A plan from before, as far as it still fits, while the next one is being found.
std::vector<Seat> still_fitting(const std::vector<Seat>& seats, const MorningNeeds& needs) {
    std::vector<Seat> fitting;
    for (const Seat& seat : seats) {
        const auto client = std::ranges::find(needs.clients, seat.client, &MorningClient::client);
        if (client != needs.clients.end()) fitting.push_back(seat);
    }
    return fitting;
}

int minute_of_day(LocalTime time) {
    const auto since = time - std::chrono::floor<std::chrono::days>(time);
    return static_cast<int>(std::chrono::duration_cast<std::chrono::minutes>(since).count());
}

}  // namespace

RunningOrderScreen::RunningOrderScreen(Session& session)
    : session_(session), planner_(new Planner(this)) {
    build();
    connect(planner_, &Planner::planned, this,
            [this] { session_.attempt([this] { show_plan(); }); });
    auto* clock = new QTimer(this);
    connect(clock, &QTimer::timeout, this, &RunningOrderScreen::show_now);
    clock->start(ms_between_looks_at_the_clock);
}

RunningOrderScreen::~RunningOrderScreen() = default;

QString RunningOrderScreen::help() const {
    return tr(
        "Who sits when on the wedding morning. Drag a bar along the time or to another stylist; "
        "what would follow is said while you drag, and undone with Ctrl+Z. With the keyboard, Tab "
        "to a bar: the arrow keys move it by 5 minutes, with Shift by 1, up and down to another "
        "stylist; Return shows what she needs. A set takes its finish along, a finish moves alone. "
        "The thin line under the bars is hair that cools.");
}

void RunningOrderScreen::build() {
    pages_ = new QStackedWidget;
    empty_ = new EmptyPage(tr("Here a wedding morning is planned: who sits when, and with whom. "
                              "There is no wedding yet."),
                           tr("See what's coming up"));
    connect(empty_, &EmptyPage::started, this,
            [this] { session_.go_to({.moment = Moment::coming_up}); });
    going_ = new QWidget;
    auto* row = new QHBoxLayout(going_);
    row->setContentsMargins(space(6), space(3), space(6), 0);
    row->setSpacing(space(5));
    QWidget* side = build_side();
    row->addWidget(build_plan(), 1);
    row->addWidget(side);
    pages_->addWidget(empty_);
    pages_->addWidget(going_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(pages_);
}

QWidget* RunningOrderScreen::build_plan() {
    auto* plan = new QWidget;
    auto* column = new QVBoxLayout(plan);
    column->setContentsMargins(space(2), 0, space(3), space(6));
    column->setSpacing(space(2));
    title_ = make_title({});
    when_ = make_quiet({});
    possible_ = make_heading({});
    cannot_ = make_column(1);
    planned_ = new QWidget;
    auto* planned = new QVBoxLayout(planned_);
    planned->setContentsMargins(0, space(1), 0, 0);
    planned->setSpacing(space(3));
    planned->addWidget(build_chart());
    const Card card = make_card();
    list_ = new WorkList;
    connect(list_, &WorkList::chosen, this, [this](ClientId client) { client_->choose(client); });
    card.column->addWidget(make_heading(tr("In the order of work")));
    card.column->addWidget(list_);
    planned->addWidget(card.frame);
    column->addWidget(title_);
    column->addWidget(when_);
    column->addSpacing(space(1));
    column->addWidget(possible_);
    column->addLayout(cannot_);
    column->addWidget(planned_);
    column->addStretch();
    return make_scrolling_side(plan);
}

QWidget* RunningOrderScreen::build_chart() {
    const Card card = make_card();
    card.column->setContentsMargins(space(4), space(4), space(3), space(4));
    chart_ = new MorningChart;
    chart_scroll_ = new QScrollArea;
    chart_scroll_->setWidgetResizable(true);
    chart_scroll_->setFrameShape(QFrame::NoFrame);
    chart_scroll_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    chart_scroll_->setFocusPolicy(Qt::NoFocus);
    chart_->setProperty("kind", QStringLiteral("sheet"));
    chart_scroll_->setWidget(chart_);
    sentences_ = new Sentences;
    remarks_ = make_quiet({});
    connect(chart_, &MorningChart::tried, this, [this](const std::vector<Seat>& seats) {
        sentences_->show_consequences(tr("If you let go here"),
                                      check_morning(morning_->needs, seats));
    });
    connect(chart_, &MorningChart::given_up, this, &RunningOrderScreen::show_consequences);
    connect(chart_, &MorningChart::changed, this, &RunningOrderScreen::move);
    connect(chart_, &MorningChart::chosen, this,
            [this](ClientId client) { client_->choose(client); });
    connect(chart_, &MorningChart::looked_at, this,
            [this](QWidget* bar) { chart_scroll_->ensureWidgetVisible(bar, space(4), 0); });
    card.column->addWidget(chart_scroll_);
    card.column->addWidget(sentences_);
    card.column->addWidget(remarks_);
    return card.frame;
}

QWidget* RunningOrderScreen::build_side() {
    auto* choices = new QWidget;
    auto* column = new QVBoxLayout(choices);
    column->setContentsMargins(0, 0, space(3), space(4));  // beside a scroll bar
    column->setSpacing(space(2));
    add_choices(*column);
    column->addSpacing(space(2));
    wrong_ = new Notice;
    stylists_ = new StylistsPart;
    client_ = new ClientPart;
    connect(stylists_, &StylistsPart::changed, this,
            [this](const std::vector<StylistHours>& stylists) {
                Morning after = morning_->morning;
                after.stylists = stylists;
                change(after, tr("changed the stylists' hours"));
            });
    connect(client_, &ClientPart::changed, this, [this](const Morning& after, const QString& name) {
        change(after, tr("changed the morning of %1").arg(name));
    });
    connect(stylists_, &StylistsPart::not_understood, wrong_, &Notice::say);
    connect(client_, &ClientPart::not_understood, wrong_, &Notice::say);
    column->addWidget(wrong_);
    column->addWidget(stylists_);
    column->addSpacing(space(2));
    column->addWidget(client_);
    column->addSpacing(space(2));
    add_ways_out(*column);
    column->addStretch();
    QScrollArea* side = make_scrolling_side(choices);
    side->setFixedWidth(space(side_steps));
    return side;
}

void RunningOrderScreen::add_choices(QVBoxLayout& column) {
    weddings_ = new QComboBox;
    weddings_->setAccessibleName(tr("Wedding"));
    weddings_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    connect(weddings_, &QComboBox::activated, this, [this](int index) {
        wedding_ = WeddingId{weddings_->itemData(index).toLongLong()};
        notice_->say({});
        wrong_->say({});
        session_.attempt([this] { refresh(); });
    });
    anew_ = make_next_button(tr("Plan it anew"));
    anew_->setToolTip(tr("Drop what was changed by hand, for the best plan"));
    connect(anew_, &QPushButton::clicked, this, [this] {
        Morning after = morning_->morning;
        after.kept.clear();
        change(after, tr("planned the morning anew"));
    });
    column.addWidget(make_quiet(tr("Wedding")));
    column.addWidget(weddings_);
    column.addWidget(anew_);
}

void RunningOrderScreen::add_ways_out(QVBoxLayout& column) {
    ways_buttons_ = new QWidget;
    auto* part = new QVBoxLayout(ways_buttons_);
    part->setContentsMargins(0, 0, 0, 0);
    part->setSpacing(space(2));
    papers_ = new QComboBox;
    papers_->setAccessibleName(tr("Paper"));
    for (const Paper paper : all_papers) papers_->addItem(shown(paper));
    notice_ = new Notice;
    ways_ = new WaysOut(session_, *notice_, *this);
    QPushButton* print = make_button(tr("Print…"));
    QPushButton* pdf = make_button(tr("Save as PDF…"));
    connect(print, &QPushButton::clicked, this, [this] {
        session_.attempt([this] { ways_->ask_and_print(page(), tr("Print the running order")); });
    });
    connect(pdf, &QPushButton::clicked, this, &RunningOrderScreen::ask_where);
    part->addWidget(make_heading(tr("On paper")));
    part->addWidget(papers_);
    part->addWidget(print);
    part->addWidget(pdf);
    column.addWidget(ways_buttons_);
    column.addWidget(notice_);
}

void RunningOrderScreen::arrive(const Place& place) {
    if (place.wedding) wedding_ = place.wedding;
    notice_->say({});
    wrong_->say({});
}

void RunningOrderScreen::refresh() {
    show_weddings();
    pages_->setCurrentWidget(wedding_ ? going_ : static_cast<QWidget*>(empty_));
    if (!wedding_) return;
    const bool same = morning_ && morning_->wedding.id == *wedding_;
    if (!same) plan_.reset();
    morning_ = wedding_morning(session_.library(), *wedding_);
    planner_->plan(*morning_);
    show_wishes();
    show_plan();
}

void RunningOrderScreen::show_weddings() {
    const auto weddings = next_wedding_first(session_.library(), session_.today());
    weddings_->clear();
    for (const Wedding& wedding : weddings) {
        //: a day and whose wedding is on it
        weddings_->addItem(
            tr("%1: %2").arg(short_shown(wedding.date), isolated(from_utf8(wedding.name))),
            key_of(wedding.id));
    }
    const int there = wedding_ ? weddings_->findData(key_of(*wedding_)) : -1;
    if (there < 0) {
        wedding_.reset();
        if (!weddings.empty()) wedding_ = weddings.front().id;
    }
    weddings_->setCurrentIndex(std::max(there, weddings.empty() ? -1 : 0));
}

void RunningOrderScreen::show_wishes() {
    stylists_->show_stylists(morning_->morning.stylists);
    QStringList names;
    for (const PartyMember& member : morning_->wedding.party) names << name_of(member.client);
    client_->show_morning(*morning_, names);
    const Paper usual = usual_paper(session_.library().settings());
    if (std::exchange(usual_paper_, usual) != usual) {
        papers_->setCurrentIndex(
            static_cast<int>(std::ranges::find(all_papers, usual) - all_papers.begin()));
    }
}

QString RunningOrderScreen::name_of(ClientId client) const {
    return from_utf8(session_.library().clients().find(client).value_or(Client{}).name);
}

std::optional<MorningPlan> RunningOrderScreen::plan_to_show() const {
    if (morning_->needs.clients.empty() || !planner_->refusal().isEmpty()) return std::nullopt;
    if (!morning_->morning.kept.empty()) return plan_of(*morning_);
    if (planner_->best()) return planner_->best();
    if (!plan_) return std::nullopt;
    MorningPlan former = *plan_;
    former.seats = still_fitting(former.seats, morning_->needs);
    former.consequences = check_morning(morning_->needs, former.seats);
    return former;
}

void RunningOrderScreen::show_plan() {
    if (chart_->is_dragging()) return;
    plan_ = plan_to_show();
    show_head();
    show_cannot();
    const bool any = plan_ && !plan_->seats.empty();
    planned_->setVisible(any);
    ways_buttons_->setVisible(any);
    anew_->setEnabled(!morning_->morning.kept.empty());
    if (!any) return;
    chart_->show_plan(morning_->needs, plan_->seats);
    chart_scroll_->setFixedHeight(chart_->minimumSizeHint().height() +
                                  chart_scroll_->horizontalScrollBar()->sizeHint().height());
    list_->show_plan(*morning_, *plan_);
    show_consequences();
    show_now();
}

void RunningOrderScreen::show_head() {
    const Wedding& wedding = morning_->wedding;
    title_->setText(from_utf8(wedding.name));
    QStringList when{shown(wedding.date)};
    if (!wedding.venue.empty()) when << from_utf8(wedding.venue);
    if (!wedding.ready_by.empty()) when << tr("ready by %1").arg(from_utf8(wedding.ready_by));
    when_->setText(when.join(QStringLiteral("  ·  ")));
    possible_->setText(possible_words());
}

QString RunningOrderScreen::possible_words() const {
    if (!planner_->refusal().isEmpty()) return planner_->refusal();
    if (!planner_->best()) return tr("Planning the morning…");
    const MorningPlan& best = *planner_->best();
    const bool well = best.consequences.late_in_all == 0;
    QString words =
        (well ? QStringLiteral("✓  ") : QStringLiteral("▲  ")) + from_utf8(possible_text(best));
    if (!morning_->cannot.empty()) words += QLatin1Char(' ') + tr("Not everybody is in it yet:");
    if (!well && plan_ && plan_->by_hand) {
        words += QLatin1Char(' ') + joined(best.consequences.lateness);
    }
    return words;
}

void RunningOrderScreen::show_cannot() {
    empty_layout(cannot_);
    for (std::size_t i = 0; i < morning_->cannot.size(); ++i) {
        auto* link = new SentenceLink(from_utf8(morning_->cannot[i]));
        const auto look = morning_->cannot_looks[i];
        connect(link, &SentenceLink::clicked, this, [this, look] {
            if (look) {
                session_.go_to({.moment = Moment::recipe, .look = look});
            } else {
                session_.go_to({.moment = Moment::coming_up});
            }
        });
        cannot_->addWidget(link);
    }
}

void RunningOrderScreen::show_consequences() {
    if (!plan_) return;
    if (!plan_->by_hand && !planner_->best()) {
        sentences_->show_heading(tr("Planning anew…"));
    } else {
        sentences_->show_consequences(
            plan_->by_hand ? tr("As you changed it") : tr("As it is planned"), plan_->consequences);
    }
    QStringList remarks;
    if (!morning_->assumed.empty()) remarks << from_utf8(morning_->assumed);
    const auto unproven = unproven_text(*plan_);
    if (unproven && !plan_->by_hand) remarks << from_utf8(*unproven);
    remarks_->setText(remarks.join(QLatin1Char(' ')));
    remarks_->setVisible(!remarks.isEmpty());
}

void RunningOrderScreen::show_now() {
    if (!morning_) return;
    const bool today = morning_->wedding.date == session_.today();
    chart_->show_now(today ? std::optional(minute_of_day(session_.now())) : std::nullopt);
}

void RunningOrderScreen::change(const Morning& after, const QString& said) {
    session_.change_records(change_morning(*wedding_, morning_->morning, after, said));
}

void RunningOrderScreen::move(const std::vector<Seat>& seats, ClientId client) {
    change(keeping(morning_->morning, seats),
           tr("moved %1 in the running order").arg(name_of(client)));
}

Paper RunningOrderScreen::paper() const {
    return all_papers[static_cast<std::size_t>(papers_->currentIndex())];
}

Document RunningOrderScreen::page() const {
    const auto ruler = make_text_ruler();
    return running_order_sheet(*morning_, *plan_, business_words(session_.library().settings()),
                               *ruler, paper());
}

void RunningOrderScreen::ask_where() {
    const auto file = ways_->ask_file(tr("Save the running order"),
                                      portable_name("Running order " + morning_->wedding.name),
                                      QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
    if (file) save_to(*file);
}

void RunningOrderScreen::save_to(const Path& file) {
    ways_->save(
        [morning = *morning_, plan = *plan_, paper = paper()](Library& library) {
            const auto ruler = make_text_ruler();
            return running_order_sheet(morning, plan, business_words(library.settings()), *ruler,
                                       paper);
        },
        file);
}

}  // namespace quarterturn
