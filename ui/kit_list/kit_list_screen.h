#pragma once

#include "indexer/looks/kit_list.h"
#include "indexer/sheet/page.h"
#include "ui/shell/screen.h"

class QComboBox;
class QLabel;
class QProgressBar;
class QSpinBox;
class QStackedWidget;
class QVBoxLayout;

namespace quarterturn {

class EmptyPage;
class KitRow;
class Notice;
class Session;
class WaysOut;
class WeddingChoice;

// What to pack for a wedding, to be ticked off; the next wedding first.
class KitListScreen : public Screen {
    Q_OBJECT
  public:
    explicit KitListScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

    void save_to(const Path& file);  // as PDF

  private:
    void build();
    QWidget* build_list();
    QWidget* build_side();
    void add_choices(QVBoxLayout& column);
    void add_ways_out(QVBoxLayout& column);
    void show_head();
    void show_lines();
    void build_lines();
    void add_group(KitGroup group);
    void tick(const KitRow& row, bool packed);
    void change_margin(int percent);
    Paper paper() const;
    Document page() const;
    void ask_where();

    Session& session_;
    std::optional<WeddingId> wedding_;
    std::optional<KitList> list_;
    std::optional<Paper> usual_paper_;  // that was shown as the first choice
    QStackedWidget* pages_;
    EmptyPage* empty_;
    QWidget* going_;
    WeddingChoice* weddings_;
    QComboBox* papers_;
    QSpinBox* spare_;
    QLabel* title_;
    QLabel* when_;
    QLabel* packed_;
    QProgressBar* bar_;
    QVBoxLayout* groups_;
    QVBoxLayout* notes_;
    Notice* notice_;
    WaysOut* ways_;
    std::vector<KitRow*> rows_;
};

}  // namespace quarterturn
