#pragma once

#include <QWidget>

#include "indexer/portfolio/gallery.h"
#include "indexer/record/selection.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QVBoxLayout;

namespace quarterturn {

class Job;
class Notice;
class Session;

// How the photos of a selection are to be written, the cautions, and what became of each.
class ExportPart : public QWidget {
    Q_OBJECT
  public:
    explicit ExportPart(Session& session, QWidget* parent = nullptr);

    void show_selection(Use use, const PhotoSelection& selection);
    void export_to(const Path& folder);
    void write_page(const Path& folder);

  private:
    QWidget* build_choices();
    QWidget* build_report();
    void show_usual_size(Use use);
    ExportWishes wishes(const Path& folder) const;
    void ask_where(QPushButton& button, const QString& title,
                   void (ExportPart::*write)(const Path&));
    std::vector<Photo> photos() const;
    void say_at_work(Job& job, const QString& what);
    void report(const std::vector<PhotoGone>& all);
    void report_page(const Gallery& gallery);
    void report_one(const PhotoGone& gone);

    Session& session_;
    Use use_ = Use::website;
    PhotoSelection selection_;
    bool size_chosen_ = false;  // by her, so that another use leaves it alone
    QLabel* what_;
    QComboBox* sizes_;
    QComboBox* shapes_;
    QSpinBox* quality_;
    QLineEdit* caption_;
    QCheckBox* line_;
    QCheckBox* no_data_mining_;
    QPushButton* export_;
    QPushButton* page_;
    Notice* notice_;
    QLabel* outcome_;
    QVBoxLayout* report_;
};

}  // namespace quarterturn
