#pragma once

#include <QPointer>

#include "ui/contact_sheet/sheet_wish.h"
#include "ui/shell/screen.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;
class QVBoxLayout;

namespace quarterturn {

class EmptyPage;
class Job;
class LookChoice;
class Notice;
class PageView;
class WaysOut;

// The contact sheet as it will be printed, and the ways to get it on paper.
class ContactSheetScreen : public Screen {
    Q_OBJECT
  public:
    explicit ContactSheetScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

    // PDF, PNG or JPEG by the file's ending; made for others, PDF alone.
    void save_to(const Path& file);

  private:
    void build();
    QWidget* build_choices();
    void add_choices(QVBoxLayout& column);
    void add_ways_out(QVBoxLayout& column);
    void fill_kinds();
    void show_usual_paper();
    SheetWish wish() const;
    void lay_out();
    void take_sheet(const SheetWish& wanted, const std::string& records, DrawnSheet sheet);
    void show_sheet();
    void show_ways_out();
    std::optional<Use> made_for() const;
    void save_for_others(Use use, const Path& file);
    void turn_page(int by);
    void ask_where(const QString& ending, const QString& kinds);
    void print();

    Session& session_;
    std::optional<LookId> look_;
    std::optional<SheetWish> shown_wish_;
    std::string shown_records_;
    std::optional<DrawnSheet> sheet_;
    QPointer<Job> laying_out_;
    int page_number_ = 0;
    QStackedWidget* pages_;
    EmptyPage* empty_;
    QWidget* going_;
    LookChoice* looks_;
    QComboBox* kinds_;
    QComboBox* papers_;
    QComboBox* made_for_;
    QLabel* for_others_;
    QLabel* shows_person_;
    std::optional<Paper> usual_paper_;  // that was shown as the first choice
    QCheckBox* during_;
    PageView* view_;
    QWidget* page_row_;
    QPushButton* previous_page_;
    QPushButton* next_page_;
    QLabel* page_words_;
    Notice* notice_;
    WaysOut* ways_;
    std::vector<QPushButton*> ways_out_;
};

}  // namespace quarterturn
