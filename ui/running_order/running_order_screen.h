#pragma once

#include <functional>

#include "indexer/looks/running_order.h"
#include "indexer/sheet/page.h"
#include "ui/shell/screen.h"

class QComboBox;
class QPushButton;
class QStackedWidget;
class QVBoxLayout;

namespace quarterturn {

class ClientPart;
class EmptyPage;
class Notice;
class MorningPlanPart;
class Planner;
class Session;
class StylistsPart;
class WeddingChoice;
class WaysOut;

// Who sits when on the wedding morning, and with whom; the next wedding first.
class RunningOrderScreen : public Screen {
    Q_OBJECT
  public:
    explicit RunningOrderScreen(Session& session);
    ~RunningOrderScreen() override;

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

    void save_to(const Path& file);  // as PDF

  private:
    void build();
    QWidget* build_side();
    void add_choices(QVBoxLayout& column);
    void add_ways_out(QVBoxLayout& column);
    void show_wishes();
    void show_plan();
    std::optional<MorningPlan> plan_to_show() const;
    void change(const Morning& after, const QString& said);
    void change_wish(ClientId client, const std::function<void(MorningWish&)>& how);
    void move(const std::vector<Seat>& seats, ClientId client);
    QString name_of(ClientId client) const;
    Document page() const;
    Paper paper() const;
    void ask_where();

    Session& session_;
    std::optional<WeddingId> wedding_;
    std::optional<WeddingMorning> morning_;
    std::optional<MorningPlan> plan_;  // that is shown
    std::optional<Paper> usual_paper_;
    Planner* planner_;
    QStackedWidget* pages_;
    EmptyPage* empty_;
    QWidget* going_;
    MorningPlanPart* plan_part_;
    WeddingChoice* weddings_;
    QComboBox* papers_;
    QPushButton* anew_;
    StylistsPart* stylists_;
    ClientPart* client_;
    Notice* wrong_;
    Notice* notice_;
    WaysOut* ways_;
    QWidget* ways_buttons_;
};

}  // namespace quarterturn
