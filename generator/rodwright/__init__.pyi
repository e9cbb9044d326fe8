"""What `rodwright` offers, one name a line: the package loads each from here when it is used."""

from rodwright import cutting as cutting
from rodwright.checks import check_parts
from rodwright.checks import check_solids as check_solids
from rodwright.checks.findings import Finding as Finding
from rodwright.checks.findings import Severity as Severity
from rodwright.checks.meanings import Meaning as Meaning
from rodwright.checks.options import check_options as check_options
from rodwright.checks.rules import Rule as Rule
from rodwright.handover.cut_json import read_cut as read_cut
from rodwright.handover.edge_list import EdgeRow as EdgeRow
from rodwright.handover.edge_list import edge_list as edge_list
from rodwright.handover.lists import HardwareRow as HardwareRow
from rodwright.handover.lists import PartsRow as PartsRow
from rodwright.handover.lists import hardware_list as hardware_list
from rodwright.handover.lists import parts_list as parts_list
from rodwright.handover.totals import StockTotal as StockTotal
from rodwright.handover.totals import stock_totals as stock_totals
from rodwright.handover.unit_json import read_unit as read_unit
from rodwright.handover.unit_json import unit_schema as unit_schema
from rodwright.jobs.book import Book as Book
from rodwright.jobs.book import book as book
from rodwright.jobs.build import Build as Build
from rodwright.jobs.build import build as build
from rodwright.jobs.cnc import CncPack as CncPack
from rodwright.jobs.cnc import cnc
from rodwright.jobs.cut import cut as cut
from rodwright.jobs.cut import write_cut as write_cut
from rodwright.jobs.look import look as look
from rodwright.jobs.page import Sent as Sent
from rodwright.jobs.page import write_page as write_page
from rodwright.jobs.quote import Quoted as Quoted
from rodwright.jobs.quote import quote
from rodwright.jobs.rack import read_rack as read_rack
from rodwright.jobs.rack import take_from_rack as take_from_rack
from rodwright.jobs.rates import read_rates as read_rates
from rodwright.jobs.render import Rendered as Rendered
from rodwright.jobs.render import render as render
from rodwright.jobs.rule import meaning_of as meaning_of
from rodwright.jobs.span import span as span
from rodwright.jobs.survey import survey as survey
from rodwright.jobs.survey import write_survey as write_survey
from rodwright.jobs.way_in import way_in as way_in
from rodwright.jobs.way_in import write_way_in as write_way_in
from rodwright.mass import centre_of_mass as centre_of_mass
from rodwright.mass import unit_weight as unit_weight
from rodwright.mass import weight as weight
from rodwright.opening.sheet import SurveySheet as SurveySheet
from rodwright.pictures.all_views import write_pictures as write_pictures
from rodwright.problems import Problem as Problem
from rodwright.problems import ProblemsError as ProblemsError
from rodwright.setout import set_out as set_out
from rodwright.setout import set_out_options as set_out_options
from rodwright.solids import solid_of as solid_of
from rodwright.solids.assembled import assembly as assembly
from rodwright.solids.assembled import scene as scene
from rodwright.solids.meshes import mesh_of as mesh_of
from rodwright.solids.meshes import placed_mesh as placed_mesh
from rodwright.strength import strength_of as strength_of
from rodwright.strength.results import Result as Result
from rodwright.strength.span_answer import SpanAnswer as SpanAnswer
from rodwright.trade.mechanics import Mechanics as Mechanics
from rodwright.trade.mechanics import mechanics_of as mechanics_of
from rodwright.unit import Joint as Joint
from rodwright.unit import Part as Part
from rodwright.unit import Unit as Unit
from rodwright.way.answer import WayInAnswer as WayInAnswer
from rodwright.wishes import SpecFile as SpecFile
from rodwright.wishes import UnitSpec as UnitSpec
from rodwright.wishes import rack_schema as rack_schema
from rodwright.wishes import rates_schema as rates_schema
from rodwright.wishes import read_spec as read_spec
from rodwright.wishes import spec_schema as spec_schema

__version__: str
check = check_parts
cnc_pack = cnc
quote_for = quote
